// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.run;

import java.util.List;
import java.util.stream.Stream;

import bandwright.dsl.Report;
import bandwright.dsl.Workbench;
import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.kernel.cell.CellState;
import bandwright.kernel.notebook.Notebook;

/**
 * What came of a notebook.
 *
 * @param executed the notebook with its outputs
 * @param cells all its cells, in order
 * @param workbench the design after the last cell
 * @param report the numbers of that design
 */
public record NotebookRun(Notebook executed, List<CellRun> cells, Workbench workbench, Report report) {
    public NotebookRun {
        cells = List.copyOf(cells);
    }

    /** All that cells were told, in order, and then what could not be measured. */
    public List<Diagnostic> diagnostics() {
        return Stream.concat(cellDiagnostics().stream(), report.troubles().stream())
                .toList();
    }

    /** All that cells were told, in order. */
    public List<Diagnostic> cellDiagnostics() {
        return cells.stream().flatMap(cell -> cell.diagnostics().stream()).toList();
    }

    /** Whether there was anything to run. */
    public boolean ranNothing() {
        return cells.stream().allMatch(cell -> cell.state() == CellState.NOT_RUN);
    }

    /** What refused cells were refused for, in order: all that they would have made is missing. */
    public List<Diagnostic> refusals() {
        return cells.stream()
                .filter(cell -> cell.state() == CellState.ERROR)
                .flatMap(cell -> cell.diagnostics().stream())
                .filter(Diagnostic::isError)
                .toList();
    }

    public Verdict verdict() {
        return verdict(report);
    }

    /** How it came out with other numbers at the end: the design's after a change. */
    public Verdict verdict(Report changed) {
        boolean cellFailed = cells.stream()
                .map(CellRun::state)
                .anyMatch(state -> state == CellState.ERROR || state == CellState.UNANSWERED);
        return cellFailed ? Verdict.ERROR : Verdict.of(changed);
    }
}
