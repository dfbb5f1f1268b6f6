// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.cell.java;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;

import org.jspecify.annotations.Nullable;

import bandwright.design.host.Stop;
import bandwright.design.host.Stopped;
import bandwright.dsl.Outcome;
import bandwright.dsl.Workbench;
import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.edit.Completeness;
import bandwright.dsl.edit.Completion;
import bandwright.dsl.edit.Documentation;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.source.Span;
import bandwright.kernel.cell.CellConsole;
import bandwright.kernel.cell.CellLanguage;

/**
 * Cells whose first line is the single word {@code java}. The compiler is made when the first of them comes. In a process one such
 * cell runs at a time, whoever's it is: the standard streams belong to the process.
 */
public final class JavaCells implements CellLanguage {
    private static final Semaphore TURN = new Semaphore(1);
    /** How long help with writing waits for a compiler that is still busy with a cell that was given up. */
    private static final long PATIENCE_MS = 300;

    private final Map<String, SourceText> questions = new ConcurrentHashMap<>();
    private volatile @Nullable JavaShell shell;
    private @Nullable CellStreams streams;

    /** {@inheritDoc} For this one: the single word {@code java}. */
    @Override
    public boolean reads(SourceText text) {
        return JavaText.isJava(text);
    }

    @Override
    public Outcome run(Workbench workbench, String cellId, SourceText text, CellConsole console) {
        try {
            TURN.acquire();
        } catch (InterruptedException stopped) {
            return failed(workbench, Failures.stopped(JavaThread.Left.ENDED));
        }
        CellStreams open = openStreams();
        open.turnTo(console);
        JavaThread thread = new JavaThread(text.name(), TURN::release);
        thread.start(() -> {
            JavaRun run = new JavaRun(openShell(), workbench, cellId, text, console);
            Outcome outcome = run.run();
            questions.put(cellId, run.questions());
            return outcome;
        });
        try {
            JavaThread.Result result = thread.await(this::isRunning);
            if (result.value() != null) {
                return result.value();
            }
            if (result.left() == JavaThread.Left.WORKING) {
                shell = null;
            }
            return failed(workbench, Failures.stopped(result.left()));
        } catch (ExecutionException failure) {
            return failed(workbench, Failures.told(text, failure));
        } finally {
            open.turnTo(CellConsole.SILENT);
        }
    }

    private boolean isRunning() {
        JavaShell present = shell;
        return present != null && present.control().isRunning();
    }

    private static Outcome failed(Workbench workbench, Diagnostic diagnostic) {
        return new Outcome(workbench, List.of(diagnostic), List.of());
    }

    private synchronized CellStreams openStreams() {
        CellStreams present = streams;
        if (present == null) {
            present = new CellStreams();
            streams = present;
        }
        return present;
    }

    private synchronized JavaShell openShell() {
        JavaShell present = shell;
        if (present == null) {
            present = new JavaShell();
            shell = present;
        }
        return present;
    }

    @Override
    public Outcome define(Workbench workbench, String cellId, SourceText text) {
        Outcome outcome = run(workbench, cellId, text, CellConsole.SILENT);
        return new Outcome(outcome.workbench(), outcome.diagnostics(), List.of(), outcome.unanswered());
    }

    @Override
    public SourceText questions(String cellId, SourceText text) {
        return questions.getOrDefault(cellId, new SourceText(text.name(), ""));
    }

    @Override
    public void interrupted() {
        Stop.stopFunctions();
    }

    @Override
    public void forget(String cellId) {
        questions.remove(cellId);
        if (shell == null) {
            return;
        }
        helped(present -> {
            present.dropOld(cellId, List.of());
            return Optional.of(cellId);
        });
    }

    @Override
    public Completion completion(Workbench workbench, SourceText text, int offset) {
        return helped(present -> Optional.of(JavaHelp.completion(present.analysis(), text, offset)))
                .orElseGet(() -> new Completion(new Span(offset, offset), List.of()));
    }

    @Override
    public Optional<Documentation> documentation(Workbench workbench, SourceText text, int offset) {
        return helped(present -> JavaHelp.documentation(present.analysis(), text, offset));
    }

    @Override
    public Optional<Completeness> completeness(SourceText text) {
        return helped(present -> JavaHelp.completeness(present.analysis(), text));
    }

    /** Nothing if the compiler is busy. */
    private <T> Optional<T> helped(Function<JavaShell, Optional<T>> help) {
        try {
            if (!TURN.tryAcquire(PATIENCE_MS, TimeUnit.MILLISECONDS)) {
                return Optional.empty();
            }
        } catch (InterruptedException ending) {
            Thread.currentThread().interrupt();
            return Optional.empty();
        }
        try {
            return help.apply(openShell());
        } catch (LinkageError | IllegalStateException noCompiler) {
            return Optional.empty();
        } finally {
            TURN.release();
        }
    }

    @Override
    public synchronized void close() {
        if (streams != null) {
            streams.close();
            streams = null;
        }
        JavaShell present = shell;
        if (present != null && !present.control().isRunning()) {
            present.close();
        }
        shell = null;
    }

    /** The words for cells that did not come to an end of their own. */
    private static final class Failures {
        static Diagnostic stopped(JavaThread.@Nullable Left left) {
            List<String> words = new ArrayList<>();
            words.add("stopped on request; the design is as it was before this cell");
            if (left == JavaThread.Left.WORKING) {
                words.add(
                        "what it was doing inside Java's own library goes on until it is done, and Java's variables and methods"
                                + " are gone with it: run their cells again, or restart the kernel to have the processor back");
            }
            return JavaErrors.error("interrupted", String.join("; ", words), null, null, null);
        }

        static Diagnostic told(SourceText text, ExecutionException ended) {
            Throwable failure = ended.getCause();
            if (failure instanceof Stopped) {
                return stopped(null);
            } else if (failure instanceof OutOfMemoryError) {
                return OutOfMemory.told(null);
            } else if (failure instanceof NoClassDefFoundError missing
                    && String.valueOf(missing.getMessage()).startsWith("jdk/jshell")) {
                return JavaErrors.error(
                        "no-compiler", "this Java has no compiler; cells in Java need a JDK", null, null, null);
            }
            return JavaErrors.error(
                    "program-fault",
                    "the program failed at " + text.name() + "; this is a fault of ours, not of the text",
                    null,
                    String.valueOf(failure),
                    null);
        }
    }
}
