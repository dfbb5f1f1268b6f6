// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.app;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.Answer;
import bandwright.dsl.export.ExportFile;
import bandwright.kernel.files.ExportFolder;
import bandwright.kernel.notebook.Notebook;
import bandwright.kernel.page.export.PageWriter;
import bandwright.kernel.run.NotebookRun;
import bandwright.kernel.run.NotebookRunner;
import bandwright.kernel.run.Progress;

/** Runs a notebook, writes it with its outputs and as a page, and sums up. */
record RunVerb(Terminal terminal, Path input, @Nullable Path out, boolean inPlace, boolean quiet) {

    int run() throws UsageFault {
        Notebook notebook = Inputs.read(input);
        RunFiles files = RunFiles.of(input, notebook.isOneText(), out, inPlace);
        ExportFolder folder =
                new ExportFolder(out != null ? out : Path.of("").resolve(input).resolveSibling(""));
        NotebookRun run = NotebookRunner.run(notebook, progress(), folder);
        write(run, files);
        Complaints complaints = new Complaints(terminal);
        complaints.tell(run.diagnostics());
        complaints.tellIfNothing(run, run.report());
        if (!quiet) {
            if (notebook.isOneText()) {
                // Whoever runs a text has no page open to look at.
                AnswerText.of(run).forEach(answer -> terminal.say("\n" + answer));
            }
            terminal.say("\n" + Summary.text(run.report(), sentence(Complaints.noRing(run))));
            exported(run).forEach(file -> terminal.say("wrote  " + folder.place(file)));
            terminal.say("wrote  " + files.notebook() + "\nwrote  " + files.page());
            if (AnswerText.isSeenElsewhere(run)) {
                terminal.say("\nAll tables and pictures are in these files: the page opens in any browser,"
                        + " the notebook in Jupyter.");
            }
        }
        return ExitCode.of(run.verdict());
    }

    private static String sentence(String reason) {
        return reason.substring(0, 1).toUpperCase(Locale.ROOT) + reason.substring(1) + ".";
    }

    private static List<ExportFile> exported(NotebookRun run) {
        return run.cells().stream()
                .flatMap(cell -> cell.answers().stream())
                .filter(Answer.Exported.class::isInstance)
                .flatMap(answer -> ((Answer.Exported) answer).files().stream())
                .toList();
    }

    private void write(NotebookRun run, RunFiles files) throws UsageFault {
        Map<Path, String> texts = new LinkedHashMap<>();
        texts.put(files.page(), PageWriter.write(run, RunFiles.stem(input)));
        texts.put(files.notebook(), run.executed().json());
        RunFiles.write(texts);
    }

    private Progress progress() {
        if (quiet) {
            return Progress.SILENT;
        }
        return terminal.redraws() ? new BarProgress(terminal.out()) : new LineProgress(terminal);
    }
}
