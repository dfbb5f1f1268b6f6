// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.design.host;

import java.util.LinkedHashSet;
import java.util.Set;

import org.jspecify.annotations.Nullable;

/**
 * Whether a cell is to stop. Each cell runs in a thread group of its own, which the threads it starts belong to as well. The code of
 * cells calls {@link #check} wherever it enters a method or jumps back; as long as no cell is to stop, this reads one field.
 */
public final class Stop {
    private static final Set<ThreadGroup> RUNNING = new LinkedHashSet<>();
    private static final Set<ThreadGroup> STOPPED = new LinkedHashSet<>();

    private static volatile boolean wanted;
    /** Whether threads of no cell's group, such as those that streams share, are to leave the code of cells too. */
    private static volatile boolean others;

    private Stop() {}

    /** Throws {@link Stopped} if the calling thread is to leave the code of a cell. */
    public static void check() {
        if (wanted) {
            leave();
        }
    }

    private static synchronized void leave() {
        ThreadGroup group = groupOfCell();
        if (group == null ? others : STOPPED.contains(group)) {
            throw new Stopped();
        }
    }

    private static @Nullable ThreadGroup groupOfCell() {
        ThreadGroup group = Thread.currentThread().getThreadGroup();
        while (group != null && !RUNNING.contains(group) && !STOPPED.contains(group)) {
            group = group.getParent();
        }
        return group;
    }

    /** A cell begins to run. Threads of earlier ones that were to stop and have not are still to do so. */
    public static synchronized void begin(ThreadGroup group) {
        STOPPED.removeIf(old -> old.activeCount() == 0);
        RUNNING.removeIf(old -> old.activeCount() == 0);
        RUNNING.add(group);
        others = false;
        wanted = !STOPPED.isEmpty();
    }

    /** A cell is to stop: its threads leave its code at their next step. What they wait for must be ended by who calls this. */
    public static synchronized void stop(ThreadGroup group) {
        RUNNING.remove(group);
        STOPPED.add(group);
        others = true;
        wanted = true;
    }
}
