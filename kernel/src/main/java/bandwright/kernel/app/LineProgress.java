// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.app;

import bandwright.kernel.cell.CellState;
import bandwright.kernel.run.Progress;

/** A line for each cell, for logs and pipes: {@code cell 3 of 7: done}. */
record LineProgress(Terminal terminal) implements Progress {
    @Override
    public void finished(int number, int total, CellState state) {
        terminal.say("cell " + number + " of " + total + ": " + state.words());
    }
}
