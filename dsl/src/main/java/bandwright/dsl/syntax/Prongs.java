// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.source.Span;

/** Pins that hold the stones of a row. */
public record Prongs(
        Name name,
        Name row,
        Name part,
        Block<ProngsProperty> block,
        @Nullable Because because,
        Span span) implements Statement {
    @Override
    public <R> R accept(Visitor<R> visitor) {
        return visitor.prongs(this);
    }
}
