// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.app;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.Sweep;
import bandwright.dsl.Swept;
import bandwright.kernel.catalogue.Catalogue;
import bandwright.kernel.catalogue.CatalogueFault;
import bandwright.kernel.catalogue.DesignText;
import bandwright.kernel.catalogue.Digests;
import bandwright.kernel.catalogue.Heading;
import bandwright.kernel.catalogue.Over;
import bandwright.kernel.catalogue.Plan;
import bandwright.kernel.catalogue.PlanReader;
import bandwright.kernel.catalogue.spark.SparkCatalogue;
import bandwright.kernel.cell.CellState;
import bandwright.kernel.cell.Guard;
import bandwright.kernel.cell.java.JavaNotRun;
import bandwright.kernel.notebook.Notebook;
import bandwright.kernel.notebook.NotebookCell;
import bandwright.kernel.run.CellRun;
import bandwright.kernel.run.NotebookRun;
import bandwright.kernel.run.NotebookRunner;

/** Works out a design in every combination of its handles, into a file of rows. */
record SweepVerb(
        Terminal terminal,
        Path design,
        List<String> over,
        List<String> measures,
        @Nullable Path planFile,
        String out,
        Mode mode,
        int threads,
        boolean spark,
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
        if (spark && mode == Mode.RESUME) {
            throw new UsageFault("--spark goes on by itself where a machine is lost; --resume is for one machine");
        }
        for (Path read : planFile == null ? List.of(design) : List.of(design, planFile)) {
            for (String ending : List.of("", ".part", ".json")) {
                if (!spark && RunFiles.same(Path.of(out + ending), read)) {
                    throw new UsageFault("this would overwrite " + read);
                }
            }
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
            if (spark) {
                onSpark(new DesignText(texts(run), plan.text().text()), heading, sweep);
            } else {
                write(new Catalogue(sweep, heading, Path.of(out)));
            }
            if (!quiet) {
                terminal.say("wrote " + out);
            }
            return ExitCode.GOOD;
        } catch (CatalogueFault fault) {
            throw new UsageFault(String.valueOf(fault.getMessage()));
        }
    }

    private void write(Catalogue catalogue) throws CatalogueFault {
        SweepProgress progress = new SweepProgress(terminal, quiet);
        AtomicBoolean done = new AtomicBoolean();
        // Whoever stops it by hand wants to know that nothing is lost.
        Thread farewell = new Thread(() -> {
            if (!done.get()) {
                progress.end();
                terminal.complain("bandwright: stopped; the same command with --resume goes on");
            }
        });
        Runtime.getRuntime().addShutdownHook(farewell);
        try {
            if (mode == Mode.RESUME) {
                catalogue.resume(threads, progress::worked);
            } else {
                catalogue.write(mode == Mode.REPLACE, threads, progress::worked);
            }
        } finally {
            done.set(true);
            progress.end();
        }
    }

    private void onSpark(DesignText text, Heading heading, Sweep sweep) throws CatalogueFault, UsageFault {
        try {
            new SparkCatalogue(text, heading, sweep, out).write(mode == Mode.REPLACE, words -> {
                if (!quiet) {
                    terminal.say(words);
                }
            });
        } catch (NoClassDefFoundError missing) {
            throw new UsageFault("--spark needs Spark's own classes: start the program by spark-submit");
        }
    }

    /** All that made the design; what cells in Java would have done is not in it. */
    private static List<DesignText.Cell> texts(NotebookRun run) {
        List<DesignText.Cell> texts = new ArrayList<>();
        for (CellRun cell : run.cells()) {
            boolean java = cell.diagnostics().stream()
                    .anyMatch(diagnostic -> diagnostic.code().equals(JavaNotRun.CODE));
            if (cell.cell().runs() && !java) {
                texts.add(new DesignText.Cell(
                        cell.cell().id(), "cell " + cell.number(), cell.cell().source()));
            }
        }
        return texts;
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
