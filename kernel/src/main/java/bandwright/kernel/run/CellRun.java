// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.run;

import java.util.List;

import bandwright.dsl.Answer;
import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.kernel.cell.CellState;
import bandwright.kernel.notebook.NotebookCell;

/**
 * What came of a cell.
 *
 * @param answers what it printed and showed while it ran among them
 * @param number the how manieth cell to run it was, from 1; 0 where it was not run
 */
public record CellRun(
        NotebookCell cell, int number, CellState state, List<Diagnostic> diagnostics, List<Answer> answers) {
    public CellRun {
        diagnostics = List.copyOf(diagnostics);
        answers = List.copyOf(answers);
    }

    static CellRun notRun(NotebookCell cell) {
        return new CellRun(cell, 0, CellState.NOT_RUN, List.of(), List.of());
    }
}
