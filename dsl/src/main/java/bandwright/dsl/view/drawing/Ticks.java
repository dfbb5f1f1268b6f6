// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.drawing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * Round numbers along an axis, 1, 2 or 5 of a decimal place apart.
 *
 * @param step between two of them
 * @param first how many steps from 0 the first one is
 * @param last how many steps from 0 the last one is
 */
record Ticks(BigDecimal step, long first, long last) {
    /** The finest ticks that lie inside a stretch and are no more than so many. */
    static Ticks inside(double low, double high, int most) {
        BigDecimal step = step((high - low) / Math.max(1, most - 1));
        // A stretch that begins on a tick has it, though rounding may have put it a hair outside.
        double hair = 1e-9 * (high - low) / step.doubleValue();
        return new Ticks(step, (long) Math.ceil(low / step.doubleValue() - hair), (long)
                Math.floor(high / step.doubleValue() + hair));
    }

    /** Ticks that enclose a stretch, some so many. */
    static Ticks around(double low, double high, int about) {
        BigDecimal step = step((high - low) / about);
        double hair = 1e-9 * (high - low) / step.doubleValue();
        long first = (long) Math.floor(low / step.doubleValue() + hair);
        return new Ticks(step, first, Math.max(first + 1, (long) Math.ceil(high / step.doubleValue() - hair)));
    }

    /** The least round step that is no shorter than a length. */
    private static BigDecimal step(double length) {
        int place = (int) Math.floor(StrictMath.log10(length));
        for (int next = place; ; next++) {
            for (int digit : new int[] {1, 2, 5}) {
                BigDecimal step = BigDecimal.valueOf(digit).scaleByPowerOfTen(next);
                if (step.doubleValue() >= length * (1 - 1e-9)) {
                    return step;
                }
            }
        }
    }

    List<Double> values() {
        List<Double> values = new ArrayList<>();
        for (long i = first; i <= last; i++) {
            values.add(step.multiply(BigDecimal.valueOf(i)).doubleValue());
        }
        return values;
    }

    /** As many decimals in each as the step has. */
    List<String> labels() {
        List<String> labels = new ArrayList<>();
        for (long i = first; i <= last; i++) {
            labels.add(step.multiply(BigDecimal.valueOf(i))
                    .setScale(Math.max(0, step.scale()), RoundingMode.UNNECESSARY)
                    .toPlainString());
        }
        return labels;
    }

    double low() {
        return step.multiply(BigDecimal.valueOf(first)).doubleValue();
    }

    double high() {
        return step.multiply(BigDecimal.valueOf(last)).doubleValue();
    }
}
