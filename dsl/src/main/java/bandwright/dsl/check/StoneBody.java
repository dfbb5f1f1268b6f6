// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.List;

import bandwright.dsl.construct.StoneLayout;
import bandwright.dsl.material.BrilliantProportions;
import bandwright.dsl.material.StoneCut;
import bandwright.dsl.model.StoneRow;

/**
 * A stone as a convex body: its girdle's outline, drawn together towards table and culet. Heights by {@link StoneRow#angles()} and {@link
 * BrilliantProportions}; crowns of rectangular cuts are taken as high as a brilliant's.
 *
 * @param levels whose convex hull it is
 */
record StoneBody(StoneLayout.Place place, StoneRow row, List<Level> levels) {
    StoneBody {
        levels = List.copyOf(levels);
    }

    /**
     * @param height over the girdle line, mm
     * @param scale its size as a share of the girdle's
     * @param wider how much farther it reaches on every side, mm, with round corners: of scale 0 it is a circle of that radius
     */
    record Level(double height, double scale, double wider) {
        Level(double height, double scale) {
            this(height, scale, 0);
        }
    }

    /** Below this share of the pavilion two stones are no longer told apart by their girdles. */
    private static final double BELOW_GIRDLE = 0.2;

    static StoneBody whole(StoneLayout.Place place, StoneRow row) {
        double size = row.size().widthMm();
        double girdle = row.girdleShare() * size;
        double crown = BrilliantProportions.REFERENCE.crownHeightPercent() / 100 * size;
        double table = BrilliantProportions.REFERENCE.tablePercent() / 100;
        return new StoneBody(
                place,
                row,
                List.of(
                        new Level(-pavilion(row), 0),
                        new Level(0, 1),
                        new Level(girdle, 1),
                        new Level(girdle + crown, table)));
    }

    /** The girdle line alone. */
    static StoneBody girdle(StoneLayout.Place place, StoneRow row) {
        return new StoneBody(place, row, List.of(new Level(0, 1)));
    }

    /** What lies well below the girdle. */
    static StoneBody pavilion(StoneLayout.Place place, StoneRow row) {
        double depth = pavilion(row);
        return new StoneBody(
                place, row, List.of(new Level(-depth, 0), new Level(-BELOW_GIRDLE * depth, 1 - BELOW_GIRDLE)));
    }

    private static double pavilion(StoneRow row) {
        return row.size().widthMm() * row.angles().pavilionShare();
    }

    /** No point of it is further from the girdle's centre, mm. */
    double reach() {
        double across = row.widthMm() / 2;
        double around = row.aroundMm() / 2;
        double deepest = 0;
        double wider = 0;
        for (Level level : levels) {
            deepest = Math.max(deepest, Math.abs(level.height));
            wider = Math.max(wider, level.wider);
        }
        return Math.sqrt(across * across + around * around + deepest * deepest) + wider;
    }

    /** Its point that lies furthest in a direction. */
    double[] furthest(double[] way) {
        double[] side = place.sideways();
        double[] along = place.along();
        double[] axis = place.axis();
        double x = dot(side, way);
        double y = dot(along, way);
        double a = row.widthMm() / 2;
        double b = row.aroundMm() / 2;
        double px;
        double py;
        if (row.cut() == StoneCut.PRINCESS || row.cut() == StoneCut.BAGUETTE) {
            px = x < 0 ? -a : a;
            py = y < 0 ? -b : b;
        } else {
            double size = Math.sqrt(a * a * x * x + b * b * y * y);
            px = size == 0 ? 0 : a * a * x / size;
            py = size == 0 ? 0 : b * b * y / size;
        }
        double up = dot(axis, way);
        double beside = Math.sqrt(x * x + y * y);
        Level best = levels.get(0);
        double most = Double.NEGATIVE_INFINITY;
        for (Level level : levels) {
            double value = level.height * up + level.scale * (px * x + py * y) + level.wider * beside;
            if (value > most) {
                most = value;
                best = level;
            }
        }
        double more = beside == 0 ? 0 : best.wider / beside;
        double bx = best.scale * px + more * x;
        double by = best.scale * py + more * y;
        double[] point = place.centre();
        for (int k = 0; k < 3; k++) {
            point[k] += best.height * axis[k] + bx * side[k] + by * along[k];
        }
        return point;
    }

    private static double dot(double[] a, double[] b) {
        return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    }

    /** Centres' distance less what both reach: never more than the distance of the bodies. */
    static double apartAtLeast(StoneBody a, StoneBody b) {
        double[] from = a.place.centre();
        double[] to = b.place.centre();
        double x = to[0] - from[0];
        double y = to[1] - from[1];
        double z = to[2] - from[2];
        return Math.sqrt(x * x + y * y + z * z) - a.reach() - b.reach();
    }

    private static final int STEPS = 400;
    private static final double EXACT_MM = 1e-4;

    /**
     * The distance between two stones, mm; 0 if they meet. The nearest point to the origin of the bodies' difference, found by going from the
     * nearest so far towards the furthest point against it (M. Frank, P. Wolfe, An algorithm for quadratic programming, 1956; E. G. Gilbert,
     * 1966). What is returned is a distance by which a plane is known to part the two: never too much, too little by under 0.001 mm.
     */
    static double distance(StoneBody a, StoneBody b) {
        return distance(a, b, Double.POSITIVE_INFINITY);
    }

    /** The same, but no nearer than what is enough to know, mm: from there on any distance that is known to part them. */
    static double distance(StoneBody a, StoneBody b, double enough) {
        double[] near = minus(a.place.centre(), b.place.centre());
        double parted = 0;
        for (int step = 0; step < STEPS; step++) {
            double size = Math.sqrt(dot(near, near));
            if (size < EXACT_MM) {
                return 0;
            }
            double[] against = {-near[0], -near[1], -near[2]};
            double[] corner = minus(a.furthest(against), b.furthest(near));
            parted = Math.max(parted, dot(near, corner) / size);
            if (size - parted < EXACT_MM || parted >= enough) {
                break;
            }
            double[] way = minus(corner, near);
            double share = Math.max(0, Math.min(1, -dot(near, way) / dot(way, way)));
            for (int k = 0; k < 3; k++) {
                near[k] += share * way[k];
            }
        }
        return parted;
    }

    private static double[] minus(double[] a, double[] b) {
        return new double[] {a[0] - b[0], a[1] - b[1], a[2] - b[2]};
    }
}
