// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.explore;

/** Hears of long work while it goes on, on the thread that asked for it. */
@FunctionalInterface
public interface Heard {
    /** Hears nothing. */
    Heard NOTHING = (done, total) -> {};

    /** So many variants of all are worked out. */
    void worked(int done, int total);
}
