// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.run;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.Answer;
import bandwright.dsl.Outcome;
import bandwright.dsl.Workbench;
import bandwright.dsl.source.SourceText;
import bandwright.kernel.cell.CellLanguage;
import bandwright.kernel.cell.CellLanguages;
import bandwright.kernel.cell.CellState;
import bandwright.kernel.cell.Guard;
import bandwright.kernel.cell.java.JavaCells;
import bandwright.kernel.cell.java.JavaNotRun;
import bandwright.kernel.display.Displays;
import bandwright.kernel.files.ExportFolder;
import bandwright.kernel.notebook.CellResult;
import bandwright.kernel.notebook.Notebook;
import bandwright.kernel.notebook.NotebookCell;
import bandwright.kernel.notebook.Output;

/**
 * Runs a notebook from the first cell to the last, without a front end. A cell with an error does not stop the rest. The
 * same notebook gives the same outputs, byte for byte: nothing is noted but what the language said.
 */
public final class NotebookRunner {
    private final CellLanguages languages;
    private final Notebook notebook;
    private final Progress progress;
    private final boolean answered;
    private final @Nullable ExportFolder folder;
    private final int total;
    private final Map<String, CellResult> results = new LinkedHashMap<>();
    private Workbench workbench = Workbench.empty();
    private int number;

    private NotebookRunner(
            CellLanguages languages,
            Notebook notebook,
            Progress progress,
            boolean answered,
            @Nullable ExportFolder folder) {
        this.folder = folder;
        this.languages = languages;
        this.notebook = notebook;
        this.progress = progress;
        this.answered = answered;
        this.total = (int) notebook.cells().stream().filter(NotebookCell::runs).count();
    }

    /** As {@link #define}, but without cells in Java: each is told and passed over. Then nothing the notebook says is run as a program. */
    public static NotebookRun defineWithoutJava(Notebook notebook) {
        try (CellLanguages languages = new CellLanguages(List.of(new JavaNotRun()))) {
            return new NotebookRunner(languages, notebook, Progress.SILENT, false, null).run();
        }
    }

    /** As {@link #run(Notebook, Progress)}, but without cells in Java: each is told and passed over. */
    public static NotebookRun runWithoutJava(Notebook notebook) {
        try (CellLanguages languages = new CellLanguages(List.of(new JavaNotRun()))) {
            return new NotebookRunner(languages, notebook, Progress.SILENT, true, null).run();
        }
    }

    /** Runs all cells and writes no files: what is exported is told, no more. */
    public static NotebookRun run(Notebook notebook, Progress progress) {
        return run(notebook, progress, true, null);
    }

    /** Runs all cells; what they export is written to a folder. */
    public static NotebookRun run(Notebook notebook, Progress progress, ExportFolder folder) {
        return run(notebook, progress, true, folder);
    }

    /** Runs all cells without answering what they ask: for the numbers alone, which need no pictures. */
    public static NotebookRun define(Notebook notebook) {
        return run(notebook, Progress.SILENT, false, null);
    }

    private static NotebookRun run(
            Notebook notebook, Progress progress, boolean answered, @Nullable ExportFolder folder) {
        try (CellLanguages languages = new CellLanguages(List.of(new JavaCells()))) {
            return new NotebookRunner(languages, notebook, progress, answered, folder).run();
        }
    }

    private NotebookRun run() {
        List<CellRun> cells = new ArrayList<>();
        for (NotebookCell cell : notebook.cells()) {
            cells.add(cell.runs() ? run(cell) : CellRun.notRun(cell));
        }
        return new NotebookRun(notebook.withResults(results), cells, workbench, Guard.report(workbench));
    }

    private CellRun run(NotebookCell cell) {
        number++;
        progress.started(number, total);
        SourceText text = new SourceText(notebook.cellName(number), cell.source());
        OutputsOfCell shown = new OutputsOfCell();
        Outcome ran = outcome(cell, text, shown);
        Outcome outcome = folder == null ? ran : folder.written(workbench, ran);
        workbench = outcome.workbench();
        List<Answer> answers = new ArrayList<>(shown.answers());
        answers.addAll(outcome.answers());
        CellRun run = new CellRun(cell, number, CellState.of(outcome), outcome.diagnostics(), answers);
        List<Output> outputs = new ArrayList<>(shown.outputs());
        outputs.addAll(Displays.outputs(outcome.diagnostics(), outcome.answers()));
        results.put(cell.id(), new CellResult(number, outputs));
        progress.finished(number, total, run.state());
        return run;
    }

    private Outcome outcome(NotebookCell cell, SourceText text, OutputsOfCell shown) {
        CellLanguage language = languages.of(text);
        if (!answered) {
            return language.define(workbench, cell.id(), text);
        }
        int running = number;
        return language.run(
                workbench, cell.id(), text, shown.console((done, of) -> progress.working(running, total, done, of)));
    }
}
