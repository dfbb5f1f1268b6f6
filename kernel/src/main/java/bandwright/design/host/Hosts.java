// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.design.host;

import org.jspecify.annotations.Nullable;

/** The host of the cell that runs; one cell in Java runs at a time in a process. */
public final class Hosts {
    private static volatile @Nullable Host current;

    private Hosts() {}

    /** @param host nothing when the cell is done */
    public static void put(@Nullable Host host) {
        current = host;
    }

    /**
     * @throws IllegalStateException if no cell runs: a thread that a cell has left behind asks in vain; or in a function for ring text,
     *     which must give the same for the same arguments
     */
    public static Host current() {
        Host host = current;
        if (Stop.isInFunction()) {
            throw new IllegalStateException("a function for ring text is given all it needs: it cannot ask the design");
        }
        if (host == null) {
            throw new IllegalStateException("no cell is running: the design can be reached from a cell only");
        }
        return host;
    }
}
