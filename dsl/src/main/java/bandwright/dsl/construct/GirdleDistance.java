// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.material.StoneCut;

/**
 * The gap between stones of two lines of a row. From points round the one girdle the
 * nearest of the other is a closed form: with height h over the other's plane and distance b from its outline there ({@link Girdle#distance}) it
 * is √(h² + b²), and h where the point lies over the other stone and clear of it; where it lies in its girdle, or the way to it from its own
 * stone's centre goes through the other, the stones are in one another and the gap is b, which is negative. For round stones of 1.5 mm found to within a hundredth of a micrometre.
 * Others are seen from both sides, and a rectangle's corners are among the points: where a corner or an end is nearest that is exact, where
 * two edges cross in space it is too much by less than a micrometre for 3 mm stones.
 */
final class GirdleDistance {
    private static final int POINTS = 720;

    private GirdleDistance() {}

    /** Between two lines of a row, by their numbers. */
    static double between(StoneLayout layout, int first, int second) {
        double least = Double.POSITIVE_INFINITY;
        Girdle girdle = Girdle.of(layout.row());
        boolean round = layout.row().cut() == StoneCut.ROUND;
        int perLine = layout.perLine();
        double thickness = layout.row().girdleShare() * layout.row().size().widthMm();
        // By symmetry of the row one stone tells all of a full even one; on an arc lines may end at different places.
        int stones = layout.full() && layout.even() ? 1 : perLine;
        for (int i = 0; i < stones; i++) {
            StoneLayout.Place one = layout.places().get(first * perLine + i);
            for (int j = 0; j < perLine; j++) {
                StoneLayout.Place other = layout.places().get(second * perLine + j);
                if (Math.abs(StrictMath.sin((other.angle() - one.angle()) / 2))
                                * one.line().girdleRadius()
                        <= 4 * girdle.reach()) {
                    least = Math.min(least, between(one, other, girdle, thickness));
                    least = Math.min(least, round ? least : between(other, one, girdle, thickness));
                }
            }
        }
        return least;
    }

    private static double between(StoneLayout.Place a, StoneLayout.Place b, Girdle girdle, double thickness) {
        double least = Double.POSITIVE_INFINITY;
        double[] centreA = a.centre();
        double[] centreB = b.centre();
        double[] axisB = b.axis();
        double[] axisA = a.axis();
        double[] alongA = round(a, axisA);
        double[] acrossA = a.sideways();
        double[] alongB = round(b, axisB);
        double[] acrossB = b.sideways();
        double[] middle = seenFrom(centreA, centreB, axisB, acrossB, alongB);
        for (int i = 0; i < POINTS; i++) {
            Point point = girdle.point(i, POINTS);
            double[] edge = centreA.clone();
            for (int k = 0; k < 3; k++) {
                edge[k] += point.x() * acrossA[k] + point.y() * alongA[k];
            }
            double[] seen = seenFrom(edge, centreB, axisB, acrossB, alongB);
            double height = Math.abs(seen[2]);
            double beside = girdle.distance(seen[0], seen[1]);
            if (beside >= 0) {
                least = Math.min(least, Math.sqrt(height * height + beside * beside));
            } else {
                boolean in = height <= thickness || passesThrough(middle, seen, girdle);
                least = Math.min(least, in ? beside : height);
            }
        }
        return least;
    }

    /** A point as a stone sees it: across, along, and over its plane. */
    private static double[] seenFrom(double[] point, double[] centre, double[] axis, double[] across, double[] along) {
        double[] seen = new double[3];
        for (int k = 0; k < 3; k++) {
            double way = point[k] - centre[k];
            seen[0] += way * across[k];
            seen[1] += way * along[k];
            seen[2] += way * axis[k];
        }
        return seen;
    }

    /** Whether the straight way between two points goes through the stone's girdle. */
    private static boolean passesThrough(double[] from, double[] to, Girdle girdle) {
        if (from[2] * to[2] >= 0) {
            return false;
        }
        double share = from[2] / (from[2] - to[2]);
        return girdle.distance(from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])) < 0;
    }

    /** The direction round the ring, square to the axis. */
    private static double[] round(StoneLayout.Place place, double[] axis) {
        double[] round = {-StrictMath.sin(place.angle()), StrictMath.cos(place.angle()), 0};
        double lean = place.axisAround();
        if (lean == 0) {
            return round;
        }
        double size = Math.sqrt(1 - lean * lean);
        for (int k = 0; k < 3; k++) {
            round[k] = (round[k] - lean * axis[k]) / size;
        }
        return round;
    }
}
