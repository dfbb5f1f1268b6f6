// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.design.host;

import org.jspecify.annotations.Nullable;

/** The host of the cell that runs; one cell in Java runs at a time in a process. */
public final class Hosts {
    private static @Nullable Host current;

    private Hosts() {}

    /** A cell begins. */
    public static synchronized void put(Host host) {
        current = host;
    }

    /** A cell has ended; if it was given up and another runs by now, that one keeps its place. */
    public static synchronized void remove(Host host) {
        if (current == host) {
            current = null;
        }
    }

    /**
     * @throws IllegalStateException in a function for ring text, which must give the same for the same arguments
     */
    public static void refuseFunctions() {
        if (Stop.isInFunction()) {
            throw new IllegalStateException("a function for ring text is given all it needs: it cannot ask the design");
        }
    }

    /**
     * @throws IllegalStateException if no cell runs: a thread that a cell has left behind asks in vain; or in a function for ring text,
     *     which must give the same for the same arguments
     */
    public static synchronized Host current() {
        Host host = current;
        refuseFunctions();
        if (host == null) {
            throw new IllegalStateException("no cell is running: the design can be reached from a cell only");
        }
        return host;
    }
}
