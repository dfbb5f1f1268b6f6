// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.cell.java;

import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BooleanSupplier;

import org.jspecify.annotations.Nullable;

import bandwright.design.host.Stop;
import bandwright.design.host.Stopped;
import bandwright.dsl.Outcome;

/**
 * The thread of one cell, in a group of its own with those that the cell starts. Not the thread that waits for the cell: an interrupt
 * that met the compiler would close its files for good.
 */
final class JavaThread {
    /** More than Java's own: the compiler goes deep into long expressions. */
    private static final long STACK_BYTES = 4L << 20;

    private static final int AGAIN_MS = 30;
    private static final int ROUNDS = 9;
    private static final int FORCED_MS = 60;

    private final ThreadGroup group;
    private final Runnable atEnd;
    private final AtomicBoolean over = new AtomicBoolean();
    private final CompletableFuture<Result> result = new CompletableFuture<>();
    private @Nullable Thread thread;

    /** How a cell that was to stop left things. */
    enum Left {
        /** It ended. */
        ENDED,
        /** The compiler is at work and cannot be interrupted; the cell ends when that is done. */
        COMPILING,
        /** What it does cannot be ended. */
        WORKING
    }

    /**
     * @param value what it gave; nothing if it was to stop
     * @param left said of one that was to stop
     */
    record Result(@Nullable Outcome value, @Nullable Left left) {}

    /** @param atEnd done once, when the cell has ended or is given up */
    JavaThread(String name, Runnable atEnd) {
        this.group = new CellGroup(name);
        this.atEnd = atEnd;
    }

    /** Says what a thread that the cell started ended with; that it was to stop is no news. */
    private static final class CellGroup extends ThreadGroup {
        CellGroup(String name) {
            super(name);
        }

        @Override
        public void uncaughtException(Thread thread, Throwable failure) {
            if (!(failure instanceof Stopped)) {
                System.err.println(thread.getName() + " ended with " + JavaErrors.words(failure));
            }
        }
    }

    void start(Callable<Outcome> work) {
        Stop.begin(group);
        Thread started = new Thread(group, () -> work(work), "cell in Java", STACK_BYTES);
        started.setDaemon(true);
        thread = started;
        started.start();
    }

    private void work(Callable<Outcome> work) {
        try {
            result.complete(new Result(work.call(), null));
        } catch (Throwable failure) {
            // Whatever it is, who waits for it must hear of it.
            result.completeExceptionally(failure);
        } finally {
            end();
        }
    }

    private void end() {
        if (over.compareAndSet(false, true)) {
            atEnd.run();
        }
    }

    /**
     * Waits. If the calling thread is interrupted meanwhile, the cell is to stop, and is given up soon if it does not.
     *
     * @param interruptible whether the cell's own code runs
     */
    Result await(BooleanSupplier interruptible) throws ExecutionException {
        try {
            return result.get();
        } catch (InterruptedException stop) {
            return new Result(null, stop(interruptible));
        }
    }

    private Left stop(BooleanSupplier interruptible) {
        Stop.stop(group);
        for (int round = 0; round < ROUNDS; round++) {
            // Again and again: code may swallow an interrupt and wait for something else.
            interrupt(interruptible.getAsBoolean());
            if (isDone(AGAIN_MS)) {
                return Left.ENDED;
            }
        }
        if (!interruptible.getAsBoolean()) {
            return Left.COMPILING;
        }
        force();
        if (isDone(FORCED_MS)) {
            return Left.ENDED;
        }
        end();
        return Left.WORKING;
    }

    private boolean isDone(int milliseconds) {
        try {
            result.get(milliseconds, TimeUnit.MILLISECONDS);
            return true;
        } catch (ExecutionException ended) {
            return true;
        } catch (TimeoutException | InterruptedException notYet) {
            return false;
        }
    }

    /** @param own whether the cell's thread too, and not those alone that it started */
    private void interrupt(boolean own) {
        Thread[] threads = new Thread[group.activeCount() + 8];
        int count = group.enumerate(threads);
        for (int i = 0; i < count; i++) {
            if (own || threads[i] != thread) {
                threads[i].interrupt();
            }
        }
    }

    /** For code without steps, such as a long sum inside a library of Java; Java 20 and later cannot do it any more. */
    private void force() {
        try {
            Thread.class.getMethod("stop").invoke(thread);
        } catch (ReflectiveOperationException newerJava) {
            return;
        }
    }
}
