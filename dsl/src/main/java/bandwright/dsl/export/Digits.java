// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.export;

/** Numbers as files have them: a point, no exponent, no zeros at the end. */
public final class Digits {
    private static final int DECIMALS = 5;
    private static final long UNIT = 100_000;

    private Digits() {}

    /** A length in mm with five decimals, which is exact for what lies on the grid of meshes. */
    public static void append(StringBuilder text, double mm) {
        long steps = Math.round(mm * UNIT);
        if (steps < 0) {
            text.append('-');
            steps = -steps;
        }
        text.append(steps / UNIT);
        long rest = steps % UNIT;
        if (rest == 0) {
            return;
        }
        int decimals = DECIMALS;
        while (rest % 10 == 0) {
            rest /= 10;
            decimals--;
        }
        text.append('.');
        String figures = Long.toString(rest);
        text.append("0".repeat(decimals - figures.length())).append(figures);
    }

    public static String of(double mm) {
        StringBuilder text = new StringBuilder();
        append(text, mm);
        return text.toString();
    }
}
