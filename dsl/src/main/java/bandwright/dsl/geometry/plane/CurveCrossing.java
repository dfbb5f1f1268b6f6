// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.plane;

import java.util.List;

/** Where the whole lines and circles that curves are pieces of cross each other. */
final class CurveCrossing {
    private CurveCrossing() {}

    /** The crossing nearest to a point, or the point itself where the two do not cross. */
    static Point nearest(Curve a, Curve b, Point near) {
        Point best = near;
        double distance = Double.POSITIVE_INFINITY;
        for (Point crossing : crossings(a, b)) {
            double d = crossing.distanceTo(near);
            if (d < distance) {
                best = crossing;
                distance = d;
            }
        }
        return best;
    }

    private static List<Point> crossings(Curve a, Curve b) {
        if (a instanceof Arc first) {
            return b instanceof Arc second ? circles(first, second) : lineAndCircle((Line) b, first);
        }
        return b instanceof Arc second ? lineAndCircle((Line) a, second) : lines((Line) a, (Line) b);
    }

    private static List<Point> lines(Line a, Line b) {
        double ax = a.end().x() - a.start().x();
        double ay = a.end().y() - a.start().y();
        double bx = b.end().x() - b.start().x();
        double by = b.end().y() - b.start().y();
        double cross = ax * by - ay * bx;
        if (cross == 0) {
            return List.of();
        }
        double share = ((b.start().x() - a.start().x()) * by
                        - (b.start().y() - a.start().y()) * bx)
                / cross;
        return List.of(a.start().plus(share * ax, share * ay));
    }

    private static List<Point> lineAndCircle(Line line, Arc circle) {
        double length = line.length();
        double dx = (line.end().x() - line.start().x()) / length;
        double dy = (line.end().y() - line.start().y()) / length;
        double along = (circle.centre().x() - line.start().x()) * dx
                + (circle.centre().y() - line.start().y()) * dy;
        Point foot = line.start().plus(along * dx, along * dy);
        double off = foot.distanceTo(circle.centre());
        if (off > circle.radius()) {
            return List.of(foot);
        }
        double half = Math.sqrt(circle.radius() * circle.radius() - off * off);
        return List.of(foot.plus(-half * dx, -half * dy), foot.plus(half * dx, half * dy));
    }

    private static List<Point> circles(Arc a, Arc b) {
        double dx = b.centre().x() - a.centre().x();
        double dy = b.centre().y() - a.centre().y();
        double distance = Math.sqrt(dx * dx + dy * dy);
        if (distance == 0) {
            return List.of();
        }
        double along = (distance * distance + a.radius() * a.radius() - b.radius() * b.radius()) / (2 * distance);
        double squared = a.radius() * a.radius() - along * along;
        double half = squared > 0 ? Math.sqrt(squared) : 0;
        Point foot = a.centre().plus(along * dx / distance, along * dy / distance);
        return List.of(
                foot.plus(-half * dy / distance, half * dx / distance),
                foot.plus(half * dy / distance, -half * dx / distance));
    }
}
