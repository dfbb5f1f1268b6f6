// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.plane;

import java.util.List;
import java.util.Random;

/** Plane figures for tests: circles, sectors of rings, turned rectangles, shapes of lines and arcs. */
final class Figures {
    private Figures() {}

    static Region circle(double x, double y, double radius) {
        return Region.of(circleOutline(x, y, radius));
    }

    static Outline circleOutline(double x, double y, double radius) {
        Point centre = new Point(x, y);
        Point right = new Point(x + radius, y);
        Point left = new Point(x - radius, y);
        return new Outline(List.of(Arc.around(centre, right, left, true), Arc.around(centre, left, right, true)));
    }

    static Region rectangle(double minX, double minY, double maxX, double maxY) {
        return Region.of(Outline.rectangle(minX, minY, maxX, maxY));
    }

    static Point polar(Point centre, double radius, double angle) {
        return centre.plus(radius * StrictMath.cos(angle), radius * StrictMath.sin(angle));
    }

    static Region turnedRectangle(Point centre, double size, double shape, double angle) {
        return Region.of(Outline.polygon(List.of(
                polar(centre, size, angle - shape),
                polar(centre, size, angle + shape),
                polar(centre, size, angle + StrictMath.PI - shape),
                polar(centre, size, angle + StrictMath.PI + shape))));
    }

    static Region ringSector(Point centre, double inner, double outer, double from, double span) {
        return Region.of(new Outline(List.of(
                new Line(polar(centre, inner, from), polar(centre, outer, from)),
                Arc.around(centre, polar(centre, outer, from), polar(centre, outer, from + span), true),
                new Line(polar(centre, outer, from + span), polar(centre, inner, from + span)),
                Arc.around(centre, polar(centre, inner, from + span), polar(centre, inner, from), false))));
    }

    static Region washer(Point centre, double inner, double outer) {
        return new Region(List.of(new Region.Piece(
                circleOutline(centre.x(), centre.y(), outer),
                List.of(circleOutline(centre.x(), centre.y(), inner).reversed()))));
    }

    /** The domed section of a band. */
    static Region dome(Point foot, double width, double side, double height) {
        Point right = foot.plus(width / 2, side);
        Point left = foot.plus(-width / 2, side);
        return Region.of(new Outline(List.of(
                new Line(foot.plus(-width / 2, 0), foot.plus(width / 2, 0)),
                new Line(foot.plus(width / 2, 0), right),
                Arc.through(right, foot.plus(0, height), left),
                new Line(left, foot.plus(-width / 2, 0)))));
    }

    static Region random(Random random) {
        Point centre = new Point(4 * random.nextDouble(), 8 + 4 * random.nextDouble());
        double size = 0.3 + 2 * random.nextDouble();
        double angle = 2 * StrictMath.PI * random.nextDouble();
        return switch (random.nextInt(5)) {
            case 0 -> circle(centre.x(), centre.y(), size);
            case 1 -> turnedRectangle(centre, size, 0.2 + random.nextDouble(), angle);
            case 2 -> ringSector(centre, size * 0.4, size, angle, 0.3 + 4 * random.nextDouble());
            case 3 -> washer(centre, size * (0.2 + 0.7 * random.nextDouble()), size);
            default -> dome(centre, 1 + size, 0.2 + random.nextDouble(), 1.3 + random.nextDouble());
        };
    }
}
