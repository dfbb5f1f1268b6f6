// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import java.util.ArrayList;
import java.util.List;

import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.material.StoneCut;
import bandwright.dsl.model.StoneRow;

/**
 * The outlines of the seat of a stone that is not round, as polygons of as many corners each: x across the row, y along it.
 *
 * <p>Of an oval every outline, the hole included, is an ellipse with corners at equal steps of its parameter, moved outwards so that each polygon
 * has the ellipse's area, as for circles ({@link bandwright.dsl.geometry.operation.Turning}). Of a rectangle the corners are corners; between them
 * points lie in the directions in which those of the hole lie, whose circle has its area too. So holes, bores and ledges hold what they would if
 * they were round; the cone between a circle and a rectangle, made of polygons, is off by less than 0.05 % of its own volume.
 */
final class SeatOutline {
    /** Sides in all, of a rectangle about as many. */
    private static final int FACETS = 48;

    /** Unit points of the hole's circle. */
    private final List<Point> circle = new ArrayList<>();

    /** The girdle's outline, stretched to a square from −1 to 1 (an oval's to the circle). */
    private final List<Point> unit = new ArrayList<>();

    private final double across;
    private final double around;

    /**
     * @param narrowedMm how much narrower than the girdle, on every side, the rectangle is whose points are to lie in the directions of the
     *     hole's: that which meets the hole
     */
    SeatOutline(StoneRow row, double narrowedMm) {
        this.across = row.widthMm() / 2;
        this.around = row.aroundMm() / 2;
        if (row.cut() == StoneCut.OVAL) {
            double step = 2 * StrictMath.PI / FACETS;
            double scale = Math.sqrt(step / StrictMath.sin(step));
            for (int f = 0; f < FACETS; f++) {
                double angle = (f + 0.5) * step;
                circle.add(new Point(scale * StrictMath.cos(angle), scale * StrictMath.sin(angle)));
            }
            unit.addAll(circle);
        } else {
            rectangle(across - narrowedMm, around - narrowedMm);
        }
    }

    private void rectangle(double halfAcross, double halfAround) {
        double corner = StrictMath.atan2(halfAround, halfAcross);
        List<Double> angles = new ArrayList<>();
        int right = odd(2 * corner);
        int top = odd(StrictMath.PI - 2 * corner);
        // From just above the middle of the right side to the corner, over the top, and down to the middle of the left.
        for (int i = (right + 1) / 2; i <= right; i++) {
            angles.add(corner * (2.0 * i / right - 1));
        }
        for (int i = 1; i <= top; i++) {
            angles.add(corner + (StrictMath.PI - 2 * corner) * i / top);
        }
        for (int i = 1; i <= right / 2; i++) {
            angles.add(StrictMath.PI - corner * (1 - 2.0 * i / right));
        }
        int half = angles.size();
        double area = StrictMath.sin(2 * angles.get(0)) + StrictMath.sin(2 * (StrictMath.PI - angles.get(half - 1)));
        List<Point> upper = new ArrayList<>();
        List<Point> sides = new ArrayList<>();
        for (int i = 0; i < half; i++) {
            double cos = StrictMath.cos(angles.get(i));
            double sin = StrictMath.sin(angles.get(i));
            double longest = Math.max(Math.abs(cos) / halfAcross, sin / halfAround);
            upper.add(new Point(cos, sin));
            sides.add(new Point(snapped(cos / longest / halfAcross), snapped(sin / longest / halfAround)));
            area += i == 0 ? 0 : 2 * StrictMath.sin(angles.get(i) - angles.get(i - 1));
        }
        double scale = Math.sqrt(2 * StrictMath.PI / area);
        upper.forEach(point -> circle.add(new Point(scale * point.x(), scale * point.y())));
        unit.addAll(sides);
        for (int i = half - 1; i >= 0; i--) {
            circle.add(new Point(circle.get(i).x(), -circle.get(i).y()));
            unit.add(new Point(sides.get(i).x(), -sides.get(i).y()));
        }
    }

    /** Points on a side lie on it to the last digit. */
    private static double snapped(double share) {
        return Math.abs(Math.abs(share) - 1) < 1e-9 ? Math.signum(share) : share;
    }

    private static int odd(double angle) {
        return 2 * Math.max(1, (int) Math.floor(angle / (2 * StrictMath.PI) * FACETS / 2)) + 1;
    }

    /** A circle, mm. */
    List<Point> circle(double radius) {
        return circle.stream()
                .map(point -> new Point(radius * point.x(), radius * point.y()))
                .toList();
    }

    /**
     * The girdle widened all round, mm (narrowed if negative). An oval's two half axes are widened, which leaves an ellipse: between the axes
     * the way to the girdle is a little less, for an oval twice as long as wide by 6 %.
     */
    List<Point> girdle(double widenedMm) {
        return unit.stream()
                .map(point -> new Point((across + widenedMm) * point.x(), (around + widenedMm) * point.y()))
                .toList();
    }
}
