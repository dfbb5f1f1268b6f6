// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import java.util.List;

/** How often rows of stones repeat round the ring. */
final class Symmetry {
    private static final double TURN = 2 * StrictMath.PI;
    private static final double SAME_RADIANS = 1e-9;

    private Symmetry() {}

    /**
     * The number of turns onto itself that all rows share, if each is also its own mirror image at angle 0; 0 otherwise.
     */
    static int folds(List<StoneLayout> rows) {
        int folds = 0;
        for (StoneLayout row : rows) {
            if (!row.even()) {
                return 0;
            }
            for (StoneLayout.Line line : row.lines()) {
                double twice = row.full()
                        ? 2 * line.firstRadians()
                        : 2 * line.firstRadians() + (row.perLine() - 1) * row.stepRadians();
                if (!isMultiple(twice, row.full() ? row.stepRadians() : TURN)) {
                    return 0;
                }
            }
            folds = greatestCommonDivisor(folds, row.full() ? row.perLine() : 1);
        }
        return folds;
    }

    private static boolean isMultiple(double value, double step) {
        double turns = value / step;
        return Math.abs(turns - Math.rint(turns)) * step < SAME_RADIANS;
    }

    private static int greatestCommonDivisor(int a, int b) {
        return b == 0 ? a : greatestCommonDivisor(b, a % b);
    }
}
