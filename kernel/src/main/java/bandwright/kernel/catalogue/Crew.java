// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.catalogue;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

import bandwright.dsl.Sweep;
import bandwright.dsl.view.Table;

/** Works out rows on several threads and hands them on in their order. Few are under way at once, so memory does not grow with rows. */
final class Crew {
    /** Few enough that a stop costs little and no thread waits long for the others. */
    private static final int STRETCH = 8;

    private static final int AHEAD = 4;

    /** Takes finished lines, on the thread that asked for them. */
    @FunctionalInterface
    interface Taker {
        void take(List<String> lines) throws CatalogueFault;
    }

    private Crew() {}

    /**
     * All rows from one on, as lines of CSV.
     *
     * @throws CatalogueFault what the taker throws; or if the thread is interrupted, which is then so still
     */
    static void work(Sweep sweep, long from, int threads, Taker taker) throws CatalogueFault {
        ExecutorService crew = Executors.newFixedThreadPool(threads, Crew::thread);
        Deque<Future<List<String>>> underWay = new ArrayDeque<>();
        long next = from;
        try {
            while (next < sweep.rows() || !underWay.isEmpty()) {
                while (next < sweep.rows() && underWay.size() < AHEAD * threads) {
                    long first = next;
                    next = end(sweep, first);
                    long end = next;
                    underWay.add(crew.submit(() -> lines(sweep, first, end)));
                }
                taker.take(underWay.remove().get());
            }
        } catch (InterruptedException stop) {
            Thread.currentThread().interrupt();
            throw new CatalogueFault("stopped", stop);
        } catch (ExecutionException failure) {
            if (failure.getCause() instanceof OutOfMemoryError) {
                throw new CatalogueFault("the memory is full; give Java more with -Xmx", failure);
            }
            throw new IllegalStateException("a row failed", failure.getCause());
        } finally {
            crew.shutdownNow();
        }
    }

    /** Rows that share all shapes stay on one thread as far as they are no more than a stretch. */
    private static long end(Sweep sweep, long first) {
        long sharing = sweep.sharingShapes();
        long length = sharing >= STRETCH ? STRETCH : STRETCH / sharing * sharing;
        return Math.min(sweep.rows(), (first / length + 1) * length);
    }

    private static List<String> lines(Sweep sweep, long from, long end) {
        List<String> lines = new ArrayList<>();
        for (long row = from; row < end && !Thread.currentThread().isInterrupted(); row++) {
            lines.add(Table.csvLine(sweep.row(row)));
        }
        return lines;
    }

    private static Thread thread(Runnable work) {
        Thread thread = new Thread(work, "catalogue");
        thread.setDaemon(true);
        return thread;
    }
}
