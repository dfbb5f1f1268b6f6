// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.app;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.export.pdf.Paper;
import bandwright.kernel.cell.CellState;
import bandwright.kernel.notebook.Notebook;
import bandwright.kernel.page.export.CellTags;
import bandwright.kernel.page.export.PageWriter;
import bandwright.kernel.page.export.PaperWriter;
import bandwright.kernel.run.CellRun;
import bandwright.kernel.run.NotebookRun;
import bandwright.kernel.run.NotebookRunner;
import bandwright.kernel.run.Progress;

/** Writes a notebook for students, as a page and for paper: without what is kept back, or with it. */
record HandoutVerb(
        Terminal terminal,
        Path input,
        boolean solutions,
        @Nullable Path out,
        Paper paper,
        boolean quiet) {

    int run() throws UsageFault {
        Notebook whole = Inputs.read(input);
        Path page = target("html");
        Path pages = target("pdf");
        Notebook notebook = solutions ? whole : whole.without(CellTags.KEPT_BACK);
        NotebookRun run = NotebookRunner.run(notebook, progress());
        String name = RunFiles.stem(input);
        Map<Path, byte[]> files = new LinkedHashMap<>();
        files.put(page, PageWriter.write(run, name).getBytes(StandardCharsets.UTF_8));
        files.put(pages, PaperWriter.write(run, name, kind(), paper));
        if (!solutions && !whole.isOneText()) {
            // To work in; what an earlier run left may tell the answers.
            files.put(target("ipynb"), notebook.withoutResults().json().getBytes(StandardCharsets.UTF_8));
        }
        RunFiles.writeBytes(files);
        new Complaints(terminal).tell(run.diagnostics());
        tellLeftOut(whole.cells().size() - notebook.cells().size(), run);
        if (!quiet) {
            files.keySet().forEach(file -> terminal.say("wrote  " + file));
        }
        return exitCode(run);
    }

    /** To a student's copy belongs what waits for the student's answer, and a condition that is not met yet. */
    private int exitCode(NotebookRun run) {
        if (solutions) {
            return ExitCode.of(run.verdict());
        }
        boolean failed = run.cells().stream().anyMatch(cell -> cell.state() == CellState.ERROR);
        return failed ? ExitCode.ERROR : ExitCode.GOOD;
    }

    private void tellLeftOut(int count, NotebookRun run) {
        List<String> waiting = run.cells().stream()
                .filter(cell -> cell.state() == CellState.UNANSWERED || cell.state() == CellState.ERROR)
                .map(CellRun::number)
                .map(number -> "cell " + number)
                .toList();
        if (count > 0 && !quiet) {
            terminal.say("left out  " + count + (count == 1 ? " cell" : " cells") + " tagged "
                    + String.join(" or ", CellTags.KEPT_BACK.stream().sorted().toList())
                    + (waiting.isEmpty() ? "" : "; without an answer now: " + String.join(", ", waiting)));
        }
    }

    private String kind() {
        return solutions ? "solutions" : "handout";
    }

    private Path target(String ending) throws UsageFault {
        if (out != null && Files.exists(out) && !Files.isDirectory(out)) {
            throw new UsageFault(out + " is a file, not a folder");
        }
        String name = RunFiles.stem(input) + "." + kind() + "." + ending;
        Path target = out == null ? input.resolveSibling(name) : out.resolve(name);
        if (Files.isDirectory(target)) {
            throw new UsageFault(target + " is a folder; a file is to be written there");
        }
        return target;
    }

    private Progress progress() {
        if (quiet) {
            return Progress.SILENT;
        }
        return terminal.redraws() ? new BarProgress(terminal.out()) : new LineProgress(terminal);
    }
}
