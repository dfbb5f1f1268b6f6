// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

import bandwright.dsl.source.Span;

/** Solves one handle for a goal: {@code find largest breadth with weight(shank) <= 6 g}. */
public record Find(Extreme extreme, Name handle, Expression condition, Span span) implements Statement {
    @Override
    public <R> R accept(Visitor<R> visitor) {
        return visitor.find(this);
    }
}
