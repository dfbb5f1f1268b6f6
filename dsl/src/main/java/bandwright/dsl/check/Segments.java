// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

/** The distance between two straight pieces in space. */
final class Segments {
    /** Each leaves two thirds of the piece: less than a billionth in the end. */
    private static final int ROUNDS = 60;

    private Segments() {}

    /** From the piece between the first two points to that between the others, mm. Along one piece the distance to the other is convex: thirds close in on the least. */
    static double distance(double[] a, double[] b, double[] c, double[] d) {
        double low = 0;
        double high = 1;
        for (int round = 0; round < ROUNDS; round++) {
            double third = (high - low) / 3;
            boolean lower = from(at(a, b, low + third), c, d) <= from(at(a, b, high - third), c, d);
            high = lower ? high - third : high;
            low = lower ? low : low + third;
        }
        return from(at(a, b, (low + high) / 2), c, d);
    }

    private static double[] at(double[] a, double[] b, double share) {
        return new double[] {a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1]), a[2] + share * (b[2] - a[2])};
    }

    private static double from(double[] point, double[] c, double[] d) {
        return length(point, nearest(point, c, d));
    }

    private static double[] nearest(double[] point, double[] from, double[] to) {
        double along = 0;
        double whole = 0;
        for (int k = 0; k < 3; k++) {
            along += (point[k] - from[k]) * (to[k] - from[k]);
            whole += (to[k] - from[k]) * (to[k] - from[k]);
        }
        double share = whole == 0 ? 0 : Math.max(0, Math.min(1, along / whole));
        return at(from, to, share);
    }

    private static double length(double[] a, double[] b) {
        double x = a[0] - b[0];
        double y = a[1] - b[1];
        double z = a[2] - b[2];
        return Math.sqrt(x * x + y * y + z * z);
    }
}
