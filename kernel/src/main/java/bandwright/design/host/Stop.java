// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.design.host;

import java.util.LinkedHashSet;
import java.util.Set;
import java.util.function.Supplier;

import org.jspecify.annotations.Nullable;

/**
 * Whether a cell is to stop. Each cell runs in a thread group of its own, which the threads it starts belong to as well. The code of
 * cells calls {@link #check} wherever it enters a method or jumps back; as long as no cell is to stop, this reads one field.
 */
public final class Stop {
    private static final Set<ThreadGroup> RUNNING = new LinkedHashSet<>();
    private static final Set<ThreadGroup> STOPPED = new LinkedHashSet<>();
    /** Set on a thread that runs a function for ring text, to what {@link #stops} was when it began. */
    private static final ThreadLocal<@Nullable Integer> FUNCTION = new ThreadLocal<>();

    private static volatile boolean looked;
    /** Whether threads of no cell's group, such as those that streams share, are to leave the code of cells too. */
    private static boolean others;

    private static int functions;
    private static volatile int stops;

    private Stop() {}

    /** Throws {@link Stopped} if the calling thread is to leave the code of a cell. */
    public static void check() {
        if (looked) {
            leave();
        }
    }

    private static void leave() {
        Integer since = FUNCTION.get();
        if (since == null ? isToStop() : since != stops) {
            throw new Stopped();
        }
    }

    private static synchronized boolean isToStop() {
        ThreadGroup group = groupOfCell();
        return group == null ? others : STOPPED.contains(group);
    }

    private static @Nullable ThreadGroup groupOfCell() {
        ThreadGroup group = Thread.currentThread().getThreadGroup();
        while (group != null && !RUNNING.contains(group) && !STOPPED.contains(group)) {
            group = group.getParent();
        }
        return group;
    }

    private static void look() {
        looked = others || functions > 0 || !STOPPED.isEmpty();
    }

    /** A cell begins to run. Threads of earlier ones that were to stop and have not are still to do so. */
    public static synchronized void begin(ThreadGroup group) {
        STOPPED.removeIf(old -> old.activeCount() == 0);
        RUNNING.removeIf(old -> old.activeCount() == 0);
        RUNNING.add(group);
        others = false;
        look();
    }

    /** A cell is to stop: its threads leave its code at their next step. What they wait for must be ended by who calls this. */
    public static synchronized void stop(ThreadGroup group) {
        RUNNING.remove(group);
        STOPPED.add(group);
        others = true;
        stopFunctions();
        look();
    }

    /** All functions that ring text has called and that still run are to stop. */
    public static synchronized void stopFunctions() {
        stops = stops + 1;
    }

    /** Runs a function for ring text, on whatever thread. */
    public static <T> T function(Supplier<T> function) {
        count(1);
        FUNCTION.set(stops);
        try {
            return function.get();
        } finally {
            FUNCTION.remove();
            count(-1);
        }
    }

    private static synchronized void count(int more) {
        functions += more;
        look();
    }

    /** Whether the calling thread runs a function for ring text. */
    static boolean isInFunction() {
        return FUNCTION.get() != null;
    }
}
