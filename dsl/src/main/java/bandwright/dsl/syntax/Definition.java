// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.source.Span;

/** A name for a value, {@code breadth = 4.6 mm}; with a range it is a handle. */
public record Definition(
        Name name,
        Expression value,
        @Nullable Range range,
        @Nullable Because because,
        Span span) implements Statement {
    @Override
    public <R> R accept(Visitor<R> visitor) {
        return visitor.definition(this);
    }
}
