// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

import java.util.List;

import bandwright.dsl.source.Span;

/** Asks for the model to turn by hand. */
public record View(List<Name> parts, Span span) implements Statement {
    public View {
        parts = List.copyOf(parts);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
        return visitor.view(this);
    }
}
