// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

import bandwright.dsl.source.Span;

/** Writes a bench sheet. */
public record Sheet(String file, Span span) implements Statement {
    @Override
    public <R> R accept(Visitor<R> visitor) {
        return visitor.sheet(this);
    }
}
