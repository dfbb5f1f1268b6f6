// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.plane;

import java.util.function.Consumer;

/** A straight piece of an outline. */
public record Line(Point start, Point end) implements Curve {
    @Override
    public Line reversed() {
        return new Line(end, start);
    }

    @Override
    public Line translated(double dx, double dy) {
        return new Line(start.plus(dx, dy), end.plus(dx, dy));
    }

    @Override
    public Line between(Point from, Point to) {
        return new Line(from, to);
    }

    @Override
    public double length() {
        return start.distanceTo(end);
    }

    @Override
    public Point middle() {
        return new Point((start.x() + end.x()) / 2, (start.y() + end.y()) / 2);
    }

    @Override
    public double startHeading() {
        return StrictMath.atan2(end.y() - start.y(), end.x() - start.x());
    }

    @Override
    public double endHeading() {
        return startHeading();
    }

    @Override
    public double carrierDistance(Point point) {
        double dx = end.x() - start.x();
        double dy = end.y() - start.y();
        double length = Math.sqrt(dx * dx + dy * dy);
        return Math.abs(dx * (point.y() - start.y()) - dy * (point.x() - start.x())) / length;
    }

    @Override
    public void integrate(MomentSum sum) {
        sum.line(start, end);
    }

    @Override
    public Point at(double share) {
        return start.plus(share * (end.x() - start.x()), share * (end.y() - start.y()));
    }

    @Override
    public int chords(double toleranceMm) {
        return 1;
    }

    @Override
    public void divide(int chords, Consumer<Point> points) {
        for (int i = 1; i < chords; i++) {
            points.accept(at((double) i / chords));
        }
        points.accept(end);
    }
}
