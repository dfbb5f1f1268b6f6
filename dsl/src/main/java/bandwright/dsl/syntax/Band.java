// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.source.Span;

/** A body that goes round the finger. */
public record Band(
        Name name, Block<BandProperty> block, @Nullable Because because, Span span) implements Statement {
    @Override
    public <R> R accept(Visitor<R> visitor) {
        return visitor.band(this);
    }
}
