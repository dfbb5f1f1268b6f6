// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.source.Span;

/** Stones that follow one another on a part. */
public record StoneRow(
        Name name,
        Name part,
        Block<StoneRowProperty> block,
        @Nullable Because because,
        Span span) implements Statement {
    @Override
    public <R> R accept(Visitor<R> visitor) {
        return visitor.stoneRow(this);
    }
}
