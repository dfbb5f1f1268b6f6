// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.cell.java;

import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;

import org.jspecify.annotations.Nullable;

import bandwright.design.host.Stop;
import bandwright.design.host.Stopped;

/**
 * Works out what a cell asks of the design on a thread beside, one thing at a time, so that the cell need not wait for the end of a
 * long piece of geometry when it is to stop. The thread is then given up; what it works on touches nothing.
 */
final class Workhand {
    /** A thread with nothing to do goes: variants are kept for long. */
    private static final int IDLE_SECONDS = 2;

    private @Nullable ExecutorService thread;

    synchronized <T> T call(Supplier<T> work) {
        ExecutorService present = thread;
        if (present == null) {
            ThreadPoolExecutor one = new ThreadPoolExecutor(
                    1, 1, IDLE_SECONDS, TimeUnit.SECONDS, new LinkedBlockingQueue<>(), Workhand::daemon);
            one.allowCoreThreadTimeOut(true);
            present = one;
            thread = present;
        }
        Future<T> future = present.submit(work::get);
        boolean interrupted = false;
        try {
            while (true) {
                try {
                    return future.get();
                } catch (InterruptedException wake) {
                    interrupted = true;
                    giveUpIfStopped(present);
                }
            }
        } catch (ExecutionException failure) {
            Throwable cause = failure.getCause();
            if (cause instanceof Error error) {
                throw error;
            } else if (cause instanceof RuntimeException exception) {
                throw exception;
            }
            throw new IllegalStateException(failure);
        } finally {
            if (interrupted) {
                Thread.currentThread().interrupt();
            }
        }
    }

    private void giveUpIfStopped(ExecutorService present) {
        try {
            Stop.check();
        } catch (Stopped stopped) {
            present.shutdownNow();
            thread = null;
            throw stopped;
        }
    }

    private static Thread daemon(Runnable work) {
        // Not in the cell's group: stopping the cell must not depend on it.
        ThreadGroup top = Thread.currentThread().getThreadGroup();
        while (top.getParent() != null) {
            top = top.getParent();
        }
        Thread thread = new Thread(top, work, "design of a cell");
        thread.setDaemon(true);
        return thread;
    }
}
