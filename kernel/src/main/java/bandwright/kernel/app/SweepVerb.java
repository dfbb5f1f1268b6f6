// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.app;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.Sweep;
import bandwright.dsl.Swept;
import bandwright.kernel.catalogue.Catalogue;
import bandwright.kernel.catalogue.CatalogueFault;
import bandwright.kernel.catalogue.Digests;
import bandwright.kernel.catalogue.Heading;
import bandwright.kernel.catalogue.Over;
import bandwright.kernel.catalogue.Plan;
import bandwright.kernel.catalogue.PlanReader;
import bandwright.kernel.cell.CellState;
import bandwright.kernel.cell.Guard;
import bandwright.kernel.notebook.Notebook;
import bandwright.kernel.notebook.NotebookCell;
import bandwright.kernel.run.NotebookRun;
import bandwright.kernel.run.NotebookRunner;

/** Works out a design in every combination of its handles, into a file of rows. */
record SweepVerb(
        Terminal terminal,
        Path design,
        List<String> over,
        List<String> measures,
        @Nullable Path planFile,
        Path out,
        Mode mode,
        int threads,
        boolean quiet) {

    /** What to do with an older catalogue of that name. */
    enum Mode {
        KEEP,
        REPLACE,
        RESUME
    }

    int run() throws UsageFault {
        if (threads < 1) {
            throw new UsageFault("--threads must be at least 1");
        }
        Notebook notebook = Inputs.read(design);
        if (RunFiles.same(out, design)) {
            throw new UsageFault("this would overwrite " + design);
        }
        NotebookRun run = NotebookRunner.defineWithoutJava(notebook);
        Complaints complaints = new Complaints(terminal);
        complaints.tell(run.cellDiagnostics());
        if (run.cells().stream().anyMatch(cell -> cell.state() == CellState.ERROR)) {
            throw new UsageFault("the design has errors; a catalogue of it would be one of something else");
        }
        try {
            Plan plan = plan();
            Swept swept = Guard.sweep(run.workbench(), plan.text());
            Sweep sweep = swept.sweep();
            if (sweep == null) {
                complaints.tell(swept.diagnostics());
                return ExitCode.USAGE;
            }
            Heading heading = new Heading(
                    new Version().getVersion()[0], run.report().fingerprint(), Digests.sha256(text(notebook)), plan);
            write(new Catalogue(sweep, heading, out));
            return ExitCode.GOOD;
        } catch (CatalogueFault fault) {
            throw new UsageFault(String.valueOf(fault.getMessage()));
        }
    }

    private void write(Catalogue catalogue) throws CatalogueFault {
        SweepProgress progress = new SweepProgress(terminal, quiet);
        try {
            if (mode == Mode.RESUME) {
                catalogue.resume(threads, progress::worked);
            } else {
                catalogue.write(mode == Mode.REPLACE, threads, progress::worked);
            }
        } finally {
            progress.end();
        }
        if (!quiet) {
            terminal.say("wrote " + out);
        }
    }

    private Plan plan() throws CatalogueFault, UsageFault {
        if (planFile != null) {
            if (!over.isEmpty() || !measures.isEmpty()) {
                throw new UsageFault("--plan says it all; --over and --measure cannot stand beside it");
            }
            return PlanReader.read(planFile);
        }
        if (over.isEmpty()) {
            throw new UsageFault(
                    "nothing varies: say --over NAME=RANGE, such as --over breadth=\"3 mm..8 mm\", or --plan FILE");
        }
        List<Over> handles = new ArrayList<>();
        for (String handle : over) {
            handles.add(Over.of(handle));
        }
        return new Plan(handles, measures);
    }

    private static String text(Notebook notebook) {
        return notebook.cells().stream()
                .filter(NotebookCell::runs)
                .map(NotebookCell::source)
                .collect(Collectors.joining("\n"));
    }
}
