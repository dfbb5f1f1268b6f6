// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.mark;

import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.Judged;
import bandwright.dsl.Workbench;
import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.diagnostic.PlainRenderer;
import bandwright.dsl.diagnostic.Severity;
import bandwright.dsl.source.SourceText;
import bandwright.kernel.cell.CellState;
import bandwright.kernel.cell.Guard;
import bandwright.kernel.cell.java.JavaNotRun;
import bandwright.kernel.notebook.Notebook;
import bandwright.kernel.notebook.NotebookFault;
import bandwright.kernel.notebook.NotebookReader;
import bandwright.kernel.notebook.Reading;
import bandwright.kernel.run.NotebookRun;
import bandwright.kernel.run.NotebookRunner;

/**
 * Marks one work: what it defines is judged, what it asks is not answered and what it exports not made. Nothing is written and no
 * cell in Java is run.
 */
public final class Marking {
    /** Nobody reads more in a report, and a hostile work must not fill it. */
    private static final int LONGEST_TEXT = 1500;

    private static final int MOST_CONDITIONS = 200;
    private static final int MOST_TROUBLES = 40;

    private Marking() {}

    /** @param file how messages call the work is the last of its names */
    public static Marked of(Path file, SourceText key) {
        Reading reading = NotebookReader.read(file);
        if (reading instanceof NotebookFault fault) {
            return Marked.not(shortened(fault.message().replace(file.toString(), String.valueOf(file.getFileName()))));
        }
        Notebook notebook = (Notebook) reading;
        NotebookRun run = NotebookRunner.defineWithoutJava(notebook);
        if (isUnreadable(run)) {
            return new Marked("could not be read", "", List.of(), List.of(), troubles(run), errors(run), 0);
        }
        Judged judged = Guard.judged(run.workbench(), key);
        if (judged.diagnostics().stream().anyMatch(Diagnostic::isError)) {
            return Marked.not("the key could not be judged: "
                    + judged.diagnostics().get(0).message());
        }
        @Nullable String title = run.report().title();
        return new Marked(
                "",
                title == null ? "" : shortened(title),
                judged.requirements().stream().map(Judgement::of).toList(),
                run.report().requirements().stream()
                        .limit(MOST_CONDITIONS)
                        .map(Judgement::of)
                        .toList(),
                troubles(run),
                errors(run),
                (int) run.cellDiagnostics().stream()
                        .filter(told -> told.code().equals(JavaNotRun.CODE))
                        .count());
    }

    private static int errors(NotebookRun run) {
        return (int) run.cells().stream()
                .filter(cell -> cell.state() == CellState.ERROR)
                .count();
    }

    /** Whether no cell of it can be read as ring text: then nothing is known of how good it is. */
    private static boolean isUnreadable(NotebookRun run) {
        return errors(run) > 0
                && run.cells().stream()
                        .filter(cell -> cell.state() != CellState.NOT_RUN)
                        .allMatch(cell -> cell.state() == CellState.ERROR
                                && !Workbench.canRead(
                                        new SourceText("", cell.cell().source())));
    }

    private static List<String> troubles(NotebookRun run) {
        Set<String> troubles = new LinkedHashSet<>();
        run.diagnostics().stream()
                .filter(told -> told.severity() != Severity.NOTE)
                .limit(MOST_TROUBLES)
                .forEach(told -> troubles.add(shortened(PlainRenderer.render(told))));
        return List.copyOf(troubles);
    }

    static String shortened(String text) {
        return text.codePointCount(0, text.length()) <= LONGEST_TEXT
                ? text
                : text.substring(0, text.offsetByCodePoints(0, LONGEST_TEXT)) + " \u2026";
    }
}
