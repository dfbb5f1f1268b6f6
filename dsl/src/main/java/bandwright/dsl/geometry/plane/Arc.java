// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.plane;

import java.util.function.Consumer;

/**
 * A piece of a circle.
 *
 * @param sweep the angle run through in radians, positive counter-clockwise, at most a full turn in size
 */
public record Arc(Point start, Point end, Point centre, double radius, double sweep) implements Curve {
    /** The arc from one point to another by way of a third, which must not lie on their line. */
    public static Arc through(Point start, Point via, Point end) {
        double ax = start.x() - via.x();
        double ay = start.y() - via.y();
        double bx = end.x() - via.x();
        double by = end.y() - via.y();
        double cross = 2 * (ax * by - ay * bx);
        if (cross == 0) {
            throw new IllegalArgumentException("Three points on a line make no arc");
        }
        double a = ax * ax + ay * ay;
        double b = bx * bx + by * by;
        Point centre = via.plus((by * a - ay * b) / cross, (ax * b - bx * a) / cross);
        // The way by the third point is counter-clockwise exactly if it lies right of the chord.
        return around(centre, start, end, cross < 0);
    }

    /** The arc about a centre from one point to another, both at the same distance from it. */
    public static Arc around(Point centre, Point start, Point end, boolean counterClockwise) {
        double from = StrictMath.atan2(start.y() - centre.y(), start.x() - centre.x());
        double to = StrictMath.atan2(end.y() - centre.y(), end.x() - centre.x());
        double sweep = to - from;
        if (counterClockwise && sweep <= 0) {
            sweep += 2 * StrictMath.PI;
        } else if (!counterClockwise && sweep >= 0) {
            sweep -= 2 * StrictMath.PI;
        }
        return new Arc(start, end, centre, centre.distanceTo(start), sweep);
    }

    public double startAngle() {
        return StrictMath.atan2(start.y() - centre.y(), start.x() - centre.x());
    }

    @Override
    public Point at(double share) {
        double angle = startAngle() + share * sweep;
        return centre.plus(radius * StrictMath.cos(angle), radius * StrictMath.sin(angle));
    }

    @Override
    public double startHeading() {
        return heading(startAngle());
    }

    @Override
    public double endHeading() {
        return heading(startAngle() + sweep);
    }

    /** Square to the radius. */
    private double heading(double angle) {
        return angle + Math.copySign(StrictMath.PI / 2, sweep);
    }

    @Override
    public Arc reversed() {
        return new Arc(end, start, centre, radius, -sweep);
    }

    @Override
    public Arc translated(double dx, double dy) {
        return new Arc(start.plus(dx, dy), end.plus(dx, dy), centre.plus(dx, dy), radius, sweep);
    }

    @Override
    public Arc between(Point from, Point to) {
        return around(centre, from, to, sweep > 0);
    }

    @Override
    public double length() {
        return radius * Math.abs(sweep);
    }

    @Override
    public Point middle() {
        return at(0.5);
    }

    @Override
    public double carrierDistance(Point point) {
        return Math.abs(centre.distanceTo(point) - radius);
    }

    @Override
    public void integrate(MomentSum sum) {
        sum.arc(this);
    }

    /**
     * {@inheritDoc}
     *
     * <p>The ends stay; the points between are moved outwards by so little that the polyline holds the same area as the
     * arc. Inscribed points would lose 2/3 of the chord's rise all along, and every volume with them.
     */
    @Override
    public void divide(int chords, Consumer<Point> points) {
        if (chords < 2) {
            points.accept(end);
            return;
        }
        double step = Math.abs(sweep) / chords;
        double moved = trueAreaRadius(chords, step);
        double from = startAngle();
        for (int i = 1; i < chords; i++) {
            double angle = from + sweep * i / chords;
            points.accept(centre.plus(moved * StrictMath.cos(angle), moved * StrictMath.sin(angle)));
        }
        points.accept(end);
    }

    @Override
    public int chords(double toleranceMm) {
        double step = 2 * StrictMath.acos(Math.max(0, 1 - toleranceMm / radius));
        int byTolerance = (int) Math.ceil(Math.abs(sweep) / Math.max(step, 1e-6) - 1e-9);
        int byAngle = (int) Math.ceil(Math.abs(sweep) / (StrictMath.PI / 6) - 1e-9);
        return Math.max(2, Math.max(byTolerance, byAngle));
    }

    /**
     * The radius ρ of the inner points: two outer triangles of area ½·R·ρ·sin t and n − 2 inner ones of ½·ρ²·sin t together
     * hold the sector's ½·R²·n·t.
     */
    private double trueAreaRadius(int chords, double step) {
        double sine = StrictMath.sin(step);
        double target = radius * radius * chords * step / sine;
        if (chords == 2) {
            return target / (2 * radius);
        }
        double inner = chords - 2;
        return (-radius + Math.sqrt(radius * radius + inner * target)) / inner;
    }
}
