// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.parse;

import java.util.List;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.syntax.Cell;

/**
 * What was read.
 *
 * @param cell the statements in which nothing was wrong
 * @param diagnostics all that was wrong, in the order of the text
 */
public record ParseResult(Cell cell, List<Diagnostic> diagnostics) {
    public ParseResult {
        diagnostics = List.copyOf(diagnostics);
    }

    public boolean hasErrors() {
        return diagnostics.stream().anyMatch(Diagnostic::isError);
    }
}
