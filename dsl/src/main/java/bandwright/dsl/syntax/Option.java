// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

import java.util.List;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.source.Span;

/** A named alternative: only its differences. */
public record Option(
        String name, List<Definition> differences, @Nullable Because because, Span span) implements Statement {
    public Option {
        differences = List.copyOf(differences);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
        return visitor.option(this);
    }
}
