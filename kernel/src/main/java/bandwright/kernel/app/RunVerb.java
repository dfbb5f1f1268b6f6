// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.app;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;

import org.jspecify.annotations.Nullable;

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
        NotebookRun run = NotebookRunner.run(notebook, progress());
        write(run, files);
        Complaints complaints = new Complaints(terminal);
        complaints.tell(run.diagnostics());
        complaints.tellIfNothing(run, run.report());
        if (!quiet) {
            terminal.say("\n" + Summary.text(run.report()));
            terminal.say("wrote  " + files.notebook() + "\nwrote  " + files.page());
        }
        return ExitCode.of(run.verdict());
    }

    private void write(NotebookRun run, RunFiles files) throws UsageFault {
        Map<Path, String> texts = new LinkedHashMap<>();
        texts.put(files.page(), PageWriter.write(run, RunFiles.stem(input)));
        texts.put(files.notebook(), run.executed().json());
        AtomicFiles.write(texts);
    }

    private Progress progress() {
        if (quiet) {
            return Progress.SILENT;
        }
        return terminal.redraws() ? new BarProgress(terminal.out()) : new LineProgress(terminal);
    }
}
