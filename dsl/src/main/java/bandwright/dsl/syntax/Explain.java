// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

import bandwright.dsl.source.Span;

/** Asks for the chain of formulas behind a value. */
public record Explain(Expression value, Span span) implements Statement {
    @Override
    public <R> R accept(Visitor<R> visitor) {
        return visitor.explain(this);
    }
}
