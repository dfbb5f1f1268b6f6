// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.app;

import java.nio.file.Path;
import java.util.List;

import org.jspecify.annotations.Nullable;

import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ScopeType;

import bandwright.dsl.export.pdf.Paper;
import bandwright.kernel.install.Rehearsal;
import bandwright.kernel.session.ParentWatch;

/** The verbs of the command line and their options; what they do is in a class each. */
@Command(
        name = "bandwright",
        description = "Rings as short, readable texts that compute.",
        mixinStandardHelpOptions = true,
        scope = ScopeType.INHERIT,
        versionProvider = Version.class,
        sortOptions = false,
        synopsisSubcommandLabel = "VERB",
        commandListHeading = "%nVerbs:%n",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:all is well",
            "1:a cell had an error, something is missing in the end, or there is no ring",
            "2:wrong use, or a file that cannot be read or written; no file was changed,"
                    + " but for the rows of a sweep that was under way",
            "3:all cells ran, but a requirement is not met"
        })
final class Verbs {
    private final Terminal terminal;

    Verbs(Terminal terminal) {
        this.terminal = terminal;
    }

    @Command(
            name = "run",
            description = {
                "Runs all cells of a notebook and writes it with its outputs, and as a page.",
                "What a .ring text asks for is printed too.",
                "Without options, the files lie beside the notebook as NAME.executed.ipynb and NAME.html."
            })
    int run(
            @Parameters(paramLabel = "NOTEBOOK", description = "An .ipynb notebook or a .ring text.") Path notebook,
            @Option(
                            names = "--out",
                            paramLabel = "DIR",
                            description = "Write NAME.ipynb and NAME.html into this folder; made if missing.")
                    @Nullable
                    Path out,
            @Option(names = "--in-place", description = "Put the executed notebook in the place of the one read.")
                    boolean inPlace,
            @Option(names = "--quiet", description = "Say nothing but what went wrong.") boolean quiet) {
        return answer(() -> new RunVerb(terminal, notebook, out, inPlace, quiet).run());
    }

    @Command(name = "measure", description = "Prints the numbers of a design alone.")
    int measure(
            @Parameters(paramLabel = "FILE", description = "A .ring text or an .ipynb notebook.") Path file,
            @Option(
                            names = "--set",
                            paramLabel = "NAME=VALUE",
                            description = {
                                "Give a definition another value; may be repeated.",
                                "Example: --set \"finger-size=US 8\""
                            })
                    @Nullable
                    List<String> settings,
            @Option(
                            names = "--format",
                            paramLabel = "FORMAT",
                            defaultValue = "text",
                            description = "One of ${COMPLETION-CANDIDATES}; ${DEFAULT-VALUE} if not given.")
                    MeasureFormat format,
            @Option(names = "--out", paramLabel = "FILE", description = "Write into a file instead of the screen.")
                    @Nullable
                    Path out) {
        List<String> given = settings == null ? List.of() : settings;
        return answer(() -> new MeasureVerb(terminal, file, given, format, out).run());
    }

    @Command(
            name = "sweep",
            description = {
                "Works out a design in every combination of some handles, into a file of rows.",
                "While it is under way the rows lie in FILE.part; stopped or killed, --resume goes on where it was.",
                "Beside the file, FILE.json says what it is a catalogue of. Cells in Java are not run."
            })
    int sweep(
            @Parameters(paramLabel = "DESIGN", description = "A .ring text or an .ipynb notebook.") Path design,
            @Option(
                            names = "--over",
                            paramLabel = "NAME=RANGE",
                            description = {
                                "What varies; may be repeated. NAME alone takes the definition's own range.",
                                "Examples: --over \"finger-size=US 3..13 step 1/4\" --over \"metal=red-gold-585, platinum-950-ru\""
                            })
                    @Nullable
                    List<String> over,
            @Option(
                            names = "--measure",
                            paramLabel = "EXPRESSION",
                            description = {
                                "What is told of each; may be repeated. The headline numbers if not given.",
                                "Example: --measure \"weight(shank)\""
                            })
                    @Nullable
                    List<String> measures,
            @Option(
                            names = "--plan",
                            paramLabel = "FILE",
                            description = {
                                "The same from a file instead:",
                                "{\"over\": {\"breadth\": \"3 mm..8 mm step 0.1 mm\"}, \"measure\": [\"weight(shank)\"]}"
                            })
                    @Nullable
                    Path plan,
            @Option(
                            names = "--out",
                            paramLabel = "FILE",
                            required = true,
                            description = "The file of rows, CSV; with --spark a folder.")
                    String out,
            @Option(names = "--spark", description = "On Apache Spark, by which the program was started.")
                    boolean spark,
            @Option(names = "--resume", description = "Go on with what was stopped.") boolean resume,
            @Option(names = "--replace", description = "Begin anew, over an older file.") boolean replace,
            @Option(
                            names = "--threads",
                            paramLabel = "N",
                            description =
                                    "How many rows are worked out at once; as many as there are cores if not given.")
                    @Nullable
                    Integer threads,
            @Option(names = "--quiet", description = "Say nothing but what went wrong.") boolean quiet) {
        return answer(() -> {
            if (resume && replace) {
                throw new UsageFault("--resume goes on with what is there, --replace begins anew: say one of them");
            }
            SweepVerb.Mode mode =
                    resume ? SweepVerb.Mode.RESUME : replace ? SweepVerb.Mode.REPLACE : SweepVerb.Mode.KEEP;
            return new SweepVerb(
                            terminal,
                            design,
                            over == null ? List.of() : over,
                            measures == null ? List.of() : measures,
                            plan,
                            out,
                            mode,
                            threads == null ? Runtime.getRuntime().availableProcessors() : threads,
                            spark,
                            quiet)
                    .run();
        });
    }

    @Command(
            name = "handout",
            description = {
                "Writes a notebook for students, as a page, as PDF and to work in:",
                "NAME.handout.html, NAME.handout.pdf and NAME.handout.ipynb, which has no outputs.",
                "Cells tagged solution or teacher are left out and not run.",
                "Nothing is exported. Ends with 1 only if a cell has an error: what waits for an answer may wait."
            })
    int handout(
            @Parameters(paramLabel = "NOTEBOOK", description = "An .ipynb notebook or a .ring text.") Path notebook,
            @Option(
                            names = "--solutions",
                            description = {
                                "Leave nothing out: NAME.solutions.html and NAME.solutions.pdf.",
                                "Ends as run does."
                            })
                    boolean solutions,
            @Option(
                            names = "--out",
                            paramLabel = "DIR",
                            description = "Write into this folder instead of beside the notebook; made if missing.")
                    @Nullable
                    Path out,
            @Option(
                            names = "--paper",
                            paramLabel = "SIZE",
                            defaultValue = "a4",
                            description = "One of a4, letter; ${DEFAULT-VALUE} if not given.")
                    Paper paper,
            @Option(names = "--quiet", description = "Say nothing but what went wrong.") boolean quiet) {
        return answer(() -> new HandoutVerb(terminal, notebook, solutions, out, paper, quiet).run());
    }

    @Command(
            name = "compare",
            description = {
                "Sets two designs side by side: values, measures, requirements, failed checks.",
                "Ends with 0 whether or not they differ; with 1 if a cell has an error or there is no ring."
            })
    int compare(
            @Parameters(paramLabel = "A", description = "A .ring text or an .ipynb notebook.") Path left,
            @Parameters(paramLabel = "B", description = "The same, to be set beside it.") Path right,
            @Option(
                            names = "--format",
                            paramLabel = "FORMAT",
                            defaultValue = "text",
                            description = "One of ${COMPLETION-CANDIDATES}; ${DEFAULT-VALUE} if not given.")
                    CompareFormat format,
            @Option(
                            names = "--out",
                            paramLabel = "FILE",
                            description = "Write a page too, with the sections of both one over the other.")
                    @Nullable
                    Path out,
            @Option(names = "--java", description = "Run cells in Java; they are programs, and are not run otherwise.")
                    boolean java) {
        return answer(() -> new CompareVerb(terminal, left, right, format, out, java).run());
    }

    @Command(
            name = "mark",
            description = {
                "Marks all notebooks and texts of a folder, and of the folders in it, by the require lines of a key.",
                "Writes marks.csv and marks.html. Each work runs in a process of its own, bounded in time and memory;"
                        + " cells in Java are not run, nothing is exported, links are not followed.",
                "A line of the key counts as many points as its reason says in front: because \"[2] room for the setter\".",
                "Ends with 1 if a work could not be marked."
            })
    int mark(
            @Parameters(paramLabel = "FOLDER", description = "Where the works are.") Path folder,
            @Option(
                            names = "--with",
                            paramLabel = "KEY",
                            required = true,
                            description = "A .ring text of require lines.")
                    Path key,
            @Option(
                            names = "--out",
                            paramLabel = "DIR",
                            description = "Write into this folder instead; made if missing.")
                    @Nullable
                    Path out,
            @Option(
                            names = "--seconds",
                            paramLabel = "N",
                            defaultValue = "60",
                            description = "The most time for one work; ${DEFAULT-VALUE} if not given.")
                    int seconds,
            @Option(
                            names = "--points",
                            paramLabel = "N",
                            defaultValue = "1",
                            description = "For a line of the key that names none; ${DEFAULT-VALUE} if not given.")
                    double points) {
        return answer(() -> new MarkVerb(terminal, folder, key, out, seconds, points).run());
    }

    @Command(name = MarkVerb.ONE, hidden = true, description = "Marks one work in this process.")
    int markOne(@Parameters(paramLabel = "WORK") Path work, @Parameters(paramLabel = "KEY") Path key) {
        return answer(() -> {
            // Whoever waits for this is the one that may end it; without that one it must end by itself.
            ParentWatch.start(() -> Runtime.getRuntime().halt(ExitCode.ERROR));
            return MarkVerb.one(terminal, work, key);
        });
    }

    @Command(
            name = "install-kernel",
            description = {
                "Makes Bandwright a kernel of Jupyter, with a copy of this program.",
                "It then stands in Jupyter's list as Bandwright."
            })
    int installKernel(
            @ArgGroup @Nullable KernelPlace place,
            @Option(
                            names = "--heap",
                            paramLabel = "AMOUNT",
                            defaultValue = "1g",
                            description = "The most memory a kernel may take; ${DEFAULT-VALUE} if not given.")
                    String heap) {
        return answer(() -> new InstallVerb(terminal, place == null ? new KernelPlace() : place).install(heap));
    }

    @Command(name = "uninstall-kernel", description = "Takes the kernel out of Jupyter's list again.")
    int uninstallKernel(@ArgGroup @Nullable KernelPlace place) {
        return answer(() -> new InstallVerb(terminal, place == null ? new KernelPlace() : place).uninstall());
    }

    @Command(
            name = "page",
            description = {
                "Opens a folder's notebooks in the browser, nothing to install.",
                "Prints a link; only this machine's browsers can use it. Ctrl+C ends it, with everything saved."
            })
    int page(
            @Parameters(
                            paramLabel = "FOLDER",
                            arity = "0..1",
                            defaultValue = ".",
                            description = "Whose notebooks and ring texts; this one if not given.")
                    Path folder,
            @Option(
                            names = "--port",
                            paramLabel = "NUMBER",
                            defaultValue = "0",
                            description = "Where to listen; any that is free if not given.")
                    int port) {
        return answer(() -> new PageVerb(terminal, folder, port).run());
    }

    @Command(name = "rehearse", hidden = true, description = "Starts and ends a kernel, for the archive of classes.")
    int rehearse() {
        return Rehearsal.run() ? ExitCode.GOOD : ExitCode.ERROR;
    }

    @Command(
            name = "kernel",
            description = {
                "Serves Jupyter, which starts it and says by a file where to listen.",
                "Nobody needs to call this; see install-kernel."
            })
    int kernel(
            @Parameters(paramLabel = "CONNECTION_FILE", description = "The file that Jupyter wrote.")
                    Path connectionFile) {
        return answer(() -> new KernelVerb(terminal, connectionFile).run());
    }

    @Command(
            name = "completion",
            description = {
                "Prints a script that completes verbs and options in bash and zsh.",
                "To use it in this shell: source <(bandwright completion)"
            })
    int completion() {
        CommandLine whole = CommandLines.of(terminal);
        terminal.say(AutoComplete.bash("bandwright", whole).stripTrailing());
        return ExitCode.GOOD;
    }

    /** A verb's work. */
    @FunctionalInterface
    private interface Work {
        int run() throws UsageFault;
    }

    private int answer(Work work) {
        try {
            return work.run();
        } catch (UsageFault fault) {
            terminal.complain("bandwright: " + fault.sentence());
            return ExitCode.USAGE;
        }
    }
}
