// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.run;

import bandwright.kernel.cell.CellState;

/** Hears of a run while it goes on, on the thread that runs. */
public interface Progress {
    /** Hears nothing. */
    Progress SILENT = new Progress() {};

    /**
     * Before a cell.
     *
     * @param number from 1
     * @param total how many cells there are to run
     */
    default void started(int number, int total) {}

    /**
     * While a cell works through variants.
     *
     * @param done how many of them are worked out
     * @param of how many there are
     */
    default void working(int number, int total, int done, int of) {}

    /** After a cell. */
    default void finished(int number, int total, CellState state) {}
}
