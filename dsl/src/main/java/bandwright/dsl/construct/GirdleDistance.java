// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

/**
 * The gap between stones of two lines of a row. A girdle counts as the circle of its mean size. From points round the one circle the
 * nearest of the other is a closed form: with height h over the other's plane and distance ρ from its axis it is √(h² + (ρ − R)²),
 * negative where the point lies over the other stone. Found to within a hundredth of a micrometre for 1.5 mm stones.
 */
final class GirdleDistance {
    private static final int POINTS = 720;

    private GirdleDistance() {}

    static double between(StoneLayout layout, StoneLayout.Line first, StoneLayout.Line second) {
        double least = Double.POSITIVE_INFINITY;
        double radius = layout.row().size().meanMm() / 2;
        // By symmetry of the row one stone tells all of a full one; on an arc lines may end at different places.
        int stones = layout.full() ? 1 : layout.perLine();
        for (int i = 0; i < stones; i++) {
            double angle = first.firstRadians() + i * layout.stepRadians();
            for (int j = 0; j < layout.perLine(); j++) {
                double other = second.firstRadians() + j * layout.stepRadians();
                if (Math.abs(StrictMath.sin((other - angle) / 2)) * first.girdleRadius() <= 4 * radius) {
                    least = Math.min(least, between(first, angle, second, other, radius));
                }
            }
        }
        return least;
    }

    private static double between(StoneLayout.Line a, double angleA, StoneLayout.Line b, double angleB, double radius) {
        double least = Double.POSITIVE_INFINITY;
        double[] centreA = point(a, angleA);
        double[] centreB = point(b, angleB);
        double[] axisB = axis(b, angleB);
        double[] sideA = {-StrictMath.sin(angleA), StrictMath.cos(angleA), 0};
        double[] axisA = axis(a, angleA);
        double[] upA = {
            axisA[1] * sideA[2] - axisA[2] * sideA[1],
            axisA[2] * sideA[0] - axisA[0] * sideA[2],
            axisA[0] * sideA[1] - axisA[1] * sideA[0]
        };
        for (int i = 0; i < POINTS; i++) {
            double turn = 2 * StrictMath.PI * i / POINTS;
            double height = 0;
            double squared = 0;
            for (int k = 0; k < 3; k++) {
                double way = centreA[k]
                        + radius * (StrictMath.cos(turn) * sideA[k] + StrictMath.sin(turn) * upA[k])
                        - centreB[k];
                height += way * axisB[k];
                squared += way * way;
            }
            double fromAxis = Math.sqrt(Math.max(0, squared - height * height));
            double beside = fromAxis - radius;
            least = Math.min(least, beside < 0 ? beside : Math.sqrt(height * height + beside * beside));
        }
        return least;
    }

    private static double[] point(StoneLayout.Line line, double angle) {
        return new double[] {
            line.girdleRadius() * StrictMath.cos(angle), line.girdleRadius() * StrictMath.sin(angle), line.across()
        };
    }

    private static double[] axis(StoneLayout.Line line, double angle) {
        return new double[] {
            line.axisOut() * StrictMath.cos(angle), line.axisOut() * StrictMath.sin(angle), line.axisAcross()
        };
    }
}
