// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.cell;

import java.util.List;
import java.util.function.Supplier;

import bandwright.dsl.Judged;
import bandwright.dsl.Listener;
import bandwright.dsl.Outcome;
import bandwright.dsl.Report;
import bandwright.dsl.Swept;
import bandwright.dsl.Workbench;
import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.diagnostic.Severity;
import bandwright.dsl.source.SourceText;

/** Turns a fault of the program into a sentence, so that one cell's trouble does not take the rest of a run with it. */
public final class Guard {
    private Guard() {}

    static Outcome run(Workbench workbench, String cellId, SourceText text, Listener listener) {
        return guarded(workbench, text, () -> workbench.run(cellId, text, listener));
    }

    static Outcome define(Workbench workbench, String cellId, SourceText text) {
        return guarded(workbench, text, () -> workbench.define(cellId, text));
    }

    private static Outcome guarded(Workbench workbench, SourceText text, Supplier<Outcome> run) {
        try {
            return run.get();
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError failure) {
            return new Outcome(workbench, List.of(diagnostic(text.name(), failure)), List.of());
        }
    }

    /** The design's numbers, or none and why. */
    public static Report report(Workbench workbench) {
        try {
            return workbench.report();
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError failure) {
            List<Diagnostic> troubles = List.of(diagnostic("the numbers of the ring", failure));
            return new Report(null, null, List.of(), List.of(), List.of(), List.of(), troubles, "");
        }
    }

    /** Conditions from outside judged on a design, or why not. */
    public static Judged judged(Workbench workbench, SourceText conditions) {
        try {
            return workbench.judged(conditions);
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError failure) {
            return new Judged(List.of(), List.of(diagnostic(conditions.name(), failure)));
        }
    }

    /** A definition's value replaced, or why not. */
    public static Outcome withValue(Workbench workbench, String name, String expression) {
        try {
            return workbench.withValue(name, expression);
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError failure) {
            return new Outcome(workbench, List.of(diagnostic(name, failure)), List.of());
        }
    }

    /** A catalogue that can be worked out, or why not. */
    public static Swept sweep(Workbench workbench, SourceText plan) {
        try {
            return workbench.sweep(plan);
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError failure) {
            return new Swept(null, List.of(diagnostic(plan.name(), failure)));
        }
    }

    private static Diagnostic diagnostic(String what, Throwable failure) {
        String message = "the program failed at " + what + "; this is a fault of ours, not of the text";
        String cause =
                failure.getClass().getSimpleName() + (failure.getMessage() == null ? "" : ": " + failure.getMessage());
        return new Diagnostic("program-fault", Severity.ERROR, message, null, List.of(), cause, null, null, null);
    }
}
