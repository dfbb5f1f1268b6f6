// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.parse;

import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.syntax.Cell;

/**
 * What was read.
 *
 * @param cell the statements in which nothing was wrong
 * @param names what all its statements would make, those with a fault among them
 * @param diagnostics all that was wrong, in the order of the text
 */
public record ParseResult(Cell cell, Set<String> names, List<Diagnostic> diagnostics) {
    public ParseResult {
        names = Collections.unmodifiableSet(new TreeSet<>(names));
        diagnostics = List.copyOf(diagnostics);
    }

    public boolean hasErrors() {
        return diagnostics.stream().anyMatch(Diagnostic::isError);
    }
}
