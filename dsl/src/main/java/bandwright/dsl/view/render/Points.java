// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.render;

/**
 * Where a pixel is looked at: points each on a line of its own, evenly from the top of the pixel to its bottom.
 *
 * @param right of the point on each line from the top down, 0 to 1 from the left side of the pixel
 * @param turn when that point's turn is, 0 first
 */
@SuppressWarnings("ArrayRecordComponent")
record Points(double[] right, int[] turn) {
    static final Points MIDDLE = new Points(new double[] {0.5}, new int[] {0});

    /** Rows and columns of the fine pattern. */
    private static final int FINE = 4;

    /** Four that cover the pixel evenly, then four between them, then the rest. */
    private static final int[] ORDER = {1, 7, 8, 14, 2, 4, 11, 13, 0, 3, 5, 6, 9, 10, 12, 15};

    /** A square pattern turned so that no two of its points share a row or column. */
    static final Points SIXTEEN = sixteen();

    private static Points sixteen() {
        Points points = new Points(new double[FINE * FINE], new int[FINE * FINE]);
        for (int turn = 0; turn < ORDER.length; turn++) {
            int row = ORDER[turn] / FINE;
            int column = ORDER[turn] % FINE;
            int line = FINE * row + FINE - 1 - column;
            points.right[line] = (column + (row + 0.5) / FINE) / FINE;
            points.turn[line] = turn;
        }
        return points;
    }

    int count() {
        return right.length;
    }

    /** How far down the pixel a line is, 0 to 1. */
    double down(int line) {
        return (line + 0.5) / right.length;
    }
}
