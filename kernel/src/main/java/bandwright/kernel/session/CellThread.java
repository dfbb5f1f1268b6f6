// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.session;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Supplier;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.Outcome;
import bandwright.dsl.Workbench;

/**
 * Runs each cell on a thread of its own, so that it can be interrupted, and given up if it does not heed that. A thread given
 * up works on what it had begun until that is done, which costs the machine's time but touches nothing: designs are immutable.
 */
final class CellThread {
    /** How long an interrupted cell may take to end by itself. */
    private static final long PATIENCE_MS = 400;

    private @Nullable Running running;

    /** A cell that runs. */
    private static final class Running {
        private final CompletableFuture<Outcome> outcome = new CompletableFuture<>();
        private final Thread thread;
        private volatile boolean interrupted;

        Running(Supplier<Outcome> work) {
            thread = new Thread(() -> work(work), "cell");
            thread.setDaemon(true);
        }

        private void work(Supplier<Outcome> work) {
            try {
                outcome.complete(work.get());
            } catch (RuntimeException | Error failure) {
                outcome.completeExceptionally(failure);
            }
        }
    }

    /**
     * What came of it.
     *
     * @param interrupted whether the user wanted it to stop
     * @param abandoned whether it was given up; then the outcome is that of a cell that did nothing
     */
    record Ran(Outcome outcome, boolean interrupted, boolean abandoned) {
        Ran with(Outcome other) {
            return new Ran(other, interrupted, abandoned);
        }
    }

    /** Runs and waits. One at a time. */
    Ran run(Workbench before, Supplier<Outcome> work) {
        Running started = new Running(work);
        synchronized (this) {
            running = started;
        }
        started.thread.start();
        try {
            return new Ran(started.outcome.join(), started.interrupted, false);
        } catch (CompletionException failure) {
            if (failure.getCause() instanceof TimeoutException) {
                return new Ran(new Outcome(before, List.of(), List.of()), true, true);
            }
            throw failure;
        } finally {
            synchronized (this) {
                running = null;
            }
        }
    }

    /** Ends the cell that runs, if one does. From any thread. */
    synchronized void interrupt() {
        Running present = running;
        if (present != null) {
            present.interrupted = true;
            present.outcome.orTimeout(PATIENCE_MS, TimeUnit.MILLISECONDS);
            present.thread.interrupt();
        }
    }
}
