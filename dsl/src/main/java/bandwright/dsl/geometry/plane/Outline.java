// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.plane;

import java.util.ArrayList;
import java.util.List;

/** A closed path of lines and arcs: each starts where the one before ends, the last ends where the first starts. */
public record Outline(List<Curve> curves) {
    public Outline {
        curves = List.copyOf(curves);
    }

    /** The straight-sided outline through the given corners. */
    public static Outline polygon(List<Point> corners) {
        List<Curve> curves = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            curves.add(new Line(corners.get(i), corners.get((i + 1) % corners.size())));
        }
        return new Outline(curves);
    }

    /** The rectangle with the given corners. */
    public static Outline rectangle(double minX, double minY, double maxX, double maxY) {
        return polygon(
                List.of(new Point(minX, minY), new Point(maxX, minY), new Point(maxX, maxY), new Point(minX, maxY)));
    }

    /** Area and first moments, exact for lines and arcs; negative if run through clockwise. */
    public Moments moments() {
        MomentSum sum = new MomentSum();
        curves.forEach(curve -> curve.integrate(sum));
        return sum.moments();
    }

    public Outline reversed() {
        List<Curve> reversed = new ArrayList<>();
        for (int i = curves.size() - 1; i >= 0; i--) {
            reversed.add(curves.get(i).reversed());
        }
        return new Outline(reversed);
    }

    public Outline counterClockwise() {
        return moments().area() < 0 ? reversed() : this;
    }

    public Outline translated(double dx, double dy) {
        return new Outline(
                curves.stream().map(curve -> curve.translated(dx, dy)).toList());
    }

    /** A polygon that stands for the outline, each arc replaced by chords that keep its area; see {@link Arc#flatten}. */
    public List<Point> flattened(double toleranceMm) {
        List<Point> points = new ArrayList<>();
        curves.forEach(curve -> curve.flatten(toleranceMm, points::add));
        return points;
    }

    public Bounds bounds() {
        Bounds bounds = Bounds.NONE;
        for (Curve curve : curves) {
            bounds = bounds.with(curve.start());
            if (curve instanceof Arc arc) {
                bounds = bounds.with(arc);
            }
        }
        return bounds;
    }
}
