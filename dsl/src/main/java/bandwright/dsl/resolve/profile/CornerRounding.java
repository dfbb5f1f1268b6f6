// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.resolve.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import bandwright.dsl.geometry.plane.Arc;
import bandwright.dsl.geometry.plane.Curve;
import bandwright.dsl.geometry.plane.Line;
import bandwright.dsl.geometry.plane.Point;

/**
 * Rounds an outer corner of a counter-clockwise outline. The centre of the rounding lies at its radius from both curves,
 * on the inner side: where the two, moved inwards by the radius, cross. A line moves to its left; an arc keeps its centre
 * and becomes smaller, or larger if it is hollow. The rounding begins and ends where the curves are nearest to its centre.
 */
final class CornerRounding {
    private static final double SMALL = 1e-9;

    private CornerRounding() {}

    /** The curves with that corner rounded, all the same if there is no corner; empty if the rounding does not fit. */
    static Optional<List<Curve>> round(List<Curve> curves, Point corner, double radius) {
        for (int i = 0; i < curves.size(); i++) {
            int next = (i + 1) % curves.size();
            if (curves.get(i).end().distanceTo(corner) < SMALL) {
                Curve first = curves.get(i);
                Curve second = curves.get(next);
                if (!turnsLeft(first, second)) {
                    return Optional.of(curves);
                }
                return centre(first, second, corner, radius)
                        .flatMap(centre -> replaced(curves, first, second, centre, radius));
            }
        }
        // The corner was taken by the rounding before it: the two do not fit side by side.
        return Optional.empty();
    }

    private static Optional<List<Curve>> replaced(
            List<Curve> curves, Curve first, Curve second, Point centre, double radius) {
        Point from = nearest(first, centre);
        Point to = nearest(second, centre);
        if (!lies(first, from) || !lies(second, to) || Math.abs(from.distanceTo(centre) - radius) > 1e-6) {
            return Optional.empty();
        }
        List<Curve> rounded = new ArrayList<>();
        for (Curve curve : curves) {
            if (curve.equals(first)) {
                add(rounded, first, first.start(), from);
                rounded.add(Arc.around(centre, from, to, true));
            } else if (curve.equals(second)) {
                add(rounded, second, to, second.end());
            } else {
                rounded.add(curve);
            }
        }
        return Optional.of(rounded);
    }

    private static void add(List<Curve> curves, Curve curve, Point from, Point to) {
        if (from.distanceTo(to) > SMALL) {
            curves.add(curve.between(from, to));
        }
    }

    private static boolean turnsLeft(Curve first, Curve second) {
        Point in = direction(first, first.end());
        Point out = direction(second, second.start());
        return in.x() * out.y() - in.y() * out.x() > SMALL;
    }

    /** The direction of travel at a point of a curve, of length 1. */
    private static Point direction(Curve curve, Point at) {
        if (curve instanceof Arc arc) {
            double turn = arc.sweep() > 0 ? 1 : -1;
            return new Point(
                    -turn * (at.y() - arc.centre().y()) / arc.radius(),
                    turn * (at.x() - arc.centre().x()) / arc.radius());
        }
        double length = curve.length();
        return new Point(
                (curve.end().x() - curve.start().x()) / length,
                (curve.end().y() - curve.start().y()) / length);
    }

    private static Optional<Point> centre(Curve first, Curve second, Point corner, double radius) {
        if (first instanceof Arc a) {
            return second instanceof Arc b
                    ? circles(a.centre(), inward(a, radius), b.centre(), inward(b, radius), corner)
                    : lineAndCircle((Line) second, a, radius, corner);
        }
        return second instanceof Arc b
                ? lineAndCircle((Line) first, b, radius, corner)
                : lines((Line) first, (Line) second, corner, radius);
    }

    private static double inward(Arc arc, double radius) {
        return arc.sweep() > 0 ? arc.radius() - radius : arc.radius() + radius;
    }

    private static Optional<Point> lines(Line first, Line second, Point corner, double radius) {
        Point in = direction(first, corner);
        Point out = direction(second, corner);
        double sine = in.x() * out.y() - in.y() * out.x();
        double cosine = in.x() * out.x() + in.y() * out.y();
        // The centre lies on the bisector; along the first line it is radius times the tangent of half the turn back.
        double back = radius * sine / (1 + cosine);
        return Optional.of(corner.plus(-back * in.x() - radius * in.y(), -back * in.y() + radius * in.x()));
    }

    private static Optional<Point> lineAndCircle(Line line, Arc arc, double radius, Point corner) {
        Point along = direction(line, line.start());
        Point moved = line.start().plus(-radius * along.y(), radius * along.x());
        double way = (arc.centre().x() - moved.x()) * along.x() + (arc.centre().y() - moved.y()) * along.y();
        Point foot = moved.plus(way * along.x(), way * along.y());
        double off = foot.distanceTo(arc.centre());
        double reach = inward(arc, radius);
        if (!(reach > 0) || off > reach) {
            return Optional.empty();
        }
        double half = Math.sqrt(reach * reach - off * off);
        return nearer(
                foot.plus(-half * along.x(), -half * along.y()), foot.plus(half * along.x(), half * along.y()), corner);
    }

    private static Optional<Point> circles(Point a, double radiusA, Point b, double radiusB, Point corner) {
        double distance = a.distanceTo(b);
        double along = (distance * distance + radiusA * radiusA - radiusB * radiusB) / (2 * distance);
        double squared = radiusA * radiusA - along * along;
        if (!(radiusA > 0 && radiusB > 0 && distance > 0 && squared >= 0)) {
            return Optional.empty();
        }
        double half = Math.sqrt(squared);
        double dx = (b.x() - a.x()) / distance;
        double dy = (b.y() - a.y()) / distance;
        Point foot = a.plus(along * dx, along * dy);
        return nearer(foot.plus(-half * dy, half * dx), foot.plus(half * dy, -half * dx), corner);
    }

    private static Optional<Point> nearer(Point a, Point b, Point corner) {
        return Optional.of(a.distanceTo(corner) <= b.distanceTo(corner) ? a : b);
    }

    private static Point nearest(Curve curve, Point centre) {
        if (curve instanceof Arc arc) {
            double distance = arc.centre().distanceTo(centre);
            double share = arc.radius() / distance;
            return arc.centre()
                    .plus(
                            (centre.x() - arc.centre().x()) * share,
                            (centre.y() - arc.centre().y()) * share);
        }
        Point along = direction(curve, curve.start());
        double way = (centre.x() - curve.start().x()) * along.x()
                + (centre.y() - curve.start().y()) * along.y();
        return curve.start().plus(way * along.x(), way * along.y());
    }

    /** Whether a point of the whole line or circle lies on the curve itself. */
    private static boolean lies(Curve curve, Point point) {
        if (point.distanceTo(curve.start()) < SMALL || point.distanceTo(curve.end()) < SMALL) {
            return true;
        } else if (curve instanceof Arc arc) {
            return Math.abs(Arc.around(arc.centre(), arc.start(), point, arc.sweep() > 0)
                            .sweep())
                    <= Math.abs(arc.sweep());
        }
        return curve.start().distanceTo(point) + point.distanceTo(curve.end()) <= curve.length() + SMALL;
    }
}
