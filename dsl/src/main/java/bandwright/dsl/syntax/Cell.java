// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

import java.util.List;

import bandwright.dsl.source.Span;

/** All statements of one text, in order. */
public record Cell(List<Statement> statements, Span span) implements Node {
    public Cell {
        statements = List.copyOf(statements);
    }
}
