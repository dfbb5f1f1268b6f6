// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl;

/** Hears how far long work is, on the thread that runs the cell. */
@FunctionalInterface
public interface Listener {
    /** Hears nothing. */
    Listener DEAF = (done, total) -> {};

    /** So many variants of all that the present question asks for are worked out. */
    void worked(int done, int total);
}
