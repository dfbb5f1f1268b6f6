// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.render;

import java.util.List;
import java.util.concurrent.ForkJoinTask;
import java.util.stream.IntStream;

/** Shares rows of work out over the cores, piece by piece; what is done in one piece must not depend on another. */
final class Parts {
    private static final int LONG = 4096;

    private Parts() {}

    /** Does some numbers, from the first to before the last. */
    interface Work {
        void on(int from, int to);
    }

    /** All numbers from 0 to before {@code count}, each of which is little to do. */
    static void each(int count, Work work) {
        each(count, LONG, work);
    }

    /** All numbers from 0 to before {@code count}, so many at a time. */
    static void each(int count, int atATime, Work work) {
        int pieces = (count + atATime - 1) / atATime;
        List<ForkJoinTask<?>> tasks = IntStream.range(0, pieces)
                .<ForkJoinTask<?>>mapToObj(piece ->
                        ForkJoinTask.adapt(() -> work.on(piece * atATime, Math.min(count, (piece + 1) * atATime))))
                .toList();
        ForkJoinTask.invokeAll(tasks);
    }
}
