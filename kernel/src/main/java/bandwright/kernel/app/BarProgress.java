// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.app;

import java.io.PrintWriter;

import bandwright.kernel.cell.CellState;
import bandwright.kernel.run.Progress;

/** One line on a screen, drawn again with each cell and wiped at the end; cells that failed keep a line of their own. */
final class BarProgress implements Progress {
    private static final int WIDTH = 24;

    private final PrintWriter out;
    private int drawn;

    BarProgress(PrintWriter out) {
        this.out = out;
    }

    @Override
    public void started(int number, int total) {
        draw(number - 1, total, "cell " + number + " of " + total);
    }

    @Override
    public void working(int number, int total, int done, int of) {
        draw(number - 1, total, "cell " + number + " of " + total + ": " + done + " of " + of + " variants");
    }

    @Override
    public void finished(int number, int total, CellState state) {
        if (state != CellState.DONE) {
            wipe();
            out.print("cell " + number + " of " + total + ": " + state.words() + "\n");
        }
        if (number == total) {
            wipe();
            out.print(total + (total == 1 ? " cell run\n" : " cells run\n"));
        } else {
            draw(number, total, "cell " + number + " of " + total);
        }
        out.flush();
    }

    private void draw(int done, int total, String words) {
        int filled = WIDTH * done / total;
        String line = "[" + "=".repeat(filled) + " ".repeat(WIDTH - filled) + "] " + words;
        wipe();
        out.print(line);
        out.flush();
        drawn = line.length();
    }

    private void wipe() {
        out.print("\r" + " ".repeat(drawn) + "\r");
        drawn = 0;
    }
}
