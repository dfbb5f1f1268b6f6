// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.render;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * How much of the sky the scene hides from each place of the ground it stands on.
 *
 * <p>The triangles are gathered into small cubes. A cube with the surface A is seen from anywhere as about A/4, the mean
 * shadow of a convex body (Cauchy), so it hides A/4 · cos θ / (π d²) of a place's sky; what several hide adds up as
 * 1 − exp(−sum). No rays and no chance in it, hence no noise.
 */
final class GroundShadow {
    private static final int CELLS = 64;
    private static final int CUBES = 24;

    private final double level;
    private final double fromY;
    private final double fromZ;
    private final double cell;
    private final float[] hidden = new float[CELLS * CELLS];

    GroundShadow(TriangleSoup soup) {
        level = soup.count() == 0 ? 0 : soup.low(0);
        double reach = soup.count() == 0 ? 1 : 1.9 * soup.radius();
        double[] cubes = cubes(soup, level);
        fromY = soup.middle().y - reach;
        fromZ = soup.middle().z - reach;
        cell = 2 * reach / CELLS;
        IntStream.range(0, CELLS).parallel().forEach(row -> {
            for (int column = 0; column < CELLS; column++) {
                double y = fromY + (column + 0.5) * cell;
                double z = fromZ + (row + 0.5) * cell;
                // Fades to nothing at the rim of the map, so that its square is never seen.
                double out = Math.max(Math.abs(y - fromY - reach), Math.abs(z - fromZ - reach)) / reach;
                hidden[row * CELLS + column] = (float) ((1 - Studio.ramp((out - 0.5) * 2)) * hidden(cubes, y, z));
            }
        });
    }

    private static double hidden(double[] cubes, double y, double z) {
        double sum = 0;
        for (int i = 0; i < cubes.length; i += 4) {
            double up = cubes[i];
            double dy = cubes[i + 1] - y;
            double dz = cubes[i + 2] - z;
            double quarter = cubes[i + 3] / 4;
            double square = up * up + dy * dy + dz * dz;
            sum += quarter * up / (Math.sqrt(square) * (StrictMath.PI * square + quarter));
        }
        return 1 - StrictMath.exp(-1.3 * sum);
    }

    /** Height, y, z and surface of every cube that holds any. */
    private static double[] cubes(TriangleSoup soup, double level) {
        double side = Math.max(1e-6, 2 * soup.radius() / CUBES);
        double[] sums = new double[4 * CUBES * CUBES * CUBES];
        for (int t = 0; t < soup.count(); t++) {
            float[] p = soup.corners;
            int at = 9 * t;
            double ux = p[at + 3] - p[at];
            double uy = p[at + 4] - p[at + 1];
            double uz = p[at + 5] - p[at + 2];
            double vx = p[at + 6] - p[at];
            double vy = p[at + 7] - p[at + 1];
            double vz = p[at + 8] - p[at + 2];
            double nx = uy * vz - uz * vy;
            double ny = uz * vx - ux * vz;
            double nz = ux * vy - uy * vx;
            double area = Math.sqrt(nx * nx + ny * ny + nz * nz) / 2;
            double x = (p[at] + p[at + 3] + p[at + 6]) / 3.0;
            double y = (p[at + 1] + p[at + 4] + p[at + 7]) / 3.0;
            double z = (p[at + 2] + p[at + 5] + p[at + 8]) / 3.0;
            int cube = (index(x - soup.low(0), side) * CUBES + index(y - soup.low(1), side)) * CUBES
                    + index(z - soup.low(2), side);
            sums[4 * cube] += area * (x - level);
            sums[4 * cube + 1] += area * y;
            sums[4 * cube + 2] += area * z;
            sums[4 * cube + 3] += area;
        }
        double[] full = new double[sums.length];
        int count = 0;
        for (int i = 0; i < sums.length; i += 4) {
            double area = sums[i + 3];
            if (area > 0) {
                full[count++] = sums[i] / area;
                full[count++] = sums[i + 1] / area;
                full[count++] = sums[i + 2] / area;
                full[count++] = area;
            }
        }
        return Arrays.copyOf(full, count);
    }

    private static int index(double offset, double side) {
        return Math.max(0, Math.min(CUBES - 1, (int) (offset / side)));
    }

    /** The height of the ground, mm along x. */
    double level() {
        return level;
    }

    /** The hidden share of the sky, 0 to 1, smooth between the cells (quadratic B-spline). */
    double at(double y, double z) {
        double column = (y - fromY) / cell - 0.5;
        double row = (z - fromZ) / cell - 0.5;
        if (!(column > -2 && row > -2 && column < CELLS + 1 && row < CELLS + 1)) {
            return 0;
        }
        long middleColumn = Math.round(column);
        long middleRow = Math.round(row);
        double sum = 0;
        for (int r = -1; r <= 1; r++) {
            double weight = spline(middleRow + r - row);
            for (int c = -1; c <= 1; c++) {
                sum += weight * spline(middleColumn + c - column) * cell(middleRow + r, middleColumn + c);
            }
        }
        return sum;
    }

    private double cell(long row, long column) {
        boolean outside = row < 0 || column < 0 || row >= CELLS || column >= CELLS;
        return outside ? 0 : hidden[(int) (row * CELLS + column)];
    }

    private static double spline(double distance) {
        double away = Math.abs(distance);
        return away <= 0.5 ? 0.75 - away * away : away < 1.5 ? (1.5 - away) * (1.5 - away) / 2 : 0;
    }
}
