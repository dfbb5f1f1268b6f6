// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl;

import java.util.List;

import bandwright.dsl.diagnostic.Diagnostic;

/**
 * What running a cell gave.
 *
 * @param workbench the workbench afterwards; the one before if the cell had an error
 * @param diagnostics errors, warnings and notes, in the order of the text
 * @param answers to what the cell asked, in the order of the text
 * @param unanswered how many of its questions have no answer, because something is not defined or cannot be made yet
 */
public record Outcome(Workbench workbench, List<Diagnostic> diagnostics, List<Answer> answers, int unanswered) {
    public Outcome {
        diagnostics = List.copyOf(diagnostics);
        answers = List.copyOf(answers);
    }

    public Outcome(Workbench workbench, List<Diagnostic> diagnostics, List<Answer> answers) {
        this(workbench, diagnostics, answers, 0);
    }

    public boolean hasErrors() {
        return diagnostics.stream().anyMatch(Diagnostic::isError);
    }
}
