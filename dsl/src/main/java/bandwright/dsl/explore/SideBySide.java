// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.explore;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.IntFunction;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.model.Fault;
import bandwright.dsl.source.Place;

/** Works out many variants on all cores. Each is worked out alone, so which thread takes which does not show. */
final class SideBySide {
    /** Enough to a batch that handing it out costs nothing, few enough that progress is told and an interrupt is heard soon. */
    private static final int LARGEST_BATCH = 32;

    static final String INTERRUPTED = "interrupted";

    private SideBySide() {}

    /**
     * All variants by number.
     *
     * @param place of the statement that asks
     * @throws Fault if the thread is interrupted; the flag is then cleared
     */
    static List<Variant> work(int count, IntFunction<Variant> worker, Heard heard, Place place) {
        int cores = Runtime.getRuntime().availableProcessors();
        int size = Math.max(1, Math.min(LARGEST_BATCH, count / (8 * cores)));
        ExecutorService crew = Executors.newFixedThreadPool(cores, SideBySide::thread);
        List<Variant> done = new ArrayList<>(count);
        try {
            List<Future<List<Variant>>> batches = new ArrayList<>();
            for (int from = 0; from < count; from += size) {
                int first = from;
                int end = Math.min(count, from + size);
                batches.add(crew.submit(() -> batch(first, end, worker)));
            }
            for (int i = 0; i < batches.size(); i++) {
                done.addAll(batches.get(i).get());
                batches.set(i, null);
                heard.worked(done.size(), count);
                if (Thread.interrupted()) {
                    throw interrupted(done.size(), count, place);
                }
            }
            return done;
        } catch (InterruptedException interrupt) {
            throw interrupted(done.size(), count, place);
        } catch (ExecutionException failure) {
            if (failure.getCause() instanceof Error error) {
                throw error;
            }
            throw new IllegalStateException("a variant failed", failure.getCause());
        } finally {
            crew.shutdownNow();
        }
    }

    private static List<Variant> batch(int from, int end, IntFunction<Variant> worker) {
        List<Variant> batch = new ArrayList<>(end - from);
        for (int i = from; i < end; i++) {
            if (Thread.currentThread().isInterrupted()) {
                throw new CancellationException();
            }
            batch.add(worker.apply(i));
        }
        return batch;
    }

    /** No question's work keeps the program alive. */
    private static Thread thread(Runnable work) {
        Thread thread = new Thread(work, "variants");
        thread.setDaemon(true);
        return thread;
    }

    static Fault interrupted(int done, int count, Place place) {
        return new Fault(Diagnostic.warning(INTERRUPTED, place)
                .with(Texts.count(done), Texts.count(count))
                .build());
    }
}
