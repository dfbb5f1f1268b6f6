// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.plane;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * An outline moved outwards, each curve by an amount of its own: a line to a parallel line, an arc to one about the same
 * centre.
 *
 * <p>Where two neighbours part at a corner, both go on straight to where they meet (a mitre), or are joined by a line where
 * that would be further off than twice the larger amount. Where they would cross, at a corner that points inwards, the plane
 * decides: the outline is then what the curves' strips and the old outline cover together.
 */
public final class OutlineGrowth {
    /** Neighbours that leave a gap smaller than this, mm, are tangent. */
    private static final double TOGETHER_MM = 1e-9;

    private static final double LONGEST_MITRE = 2;

    private final ToDoubleFunction<Curve> amount;
    private final Outline outline;

    private OutlineGrowth(Outline outline, ToDoubleFunction<Curve> amount) {
        this.outline = outline.counterClockwise();
        this.amount = amount;
    }

    /**
     * @param outline closed, crossing itself nowhere
     * @param amount how far each curve moves outwards, mm, 0 or more
     */
    public static Outline of(Outline outline, ToDoubleFunction<Curve> amount) {
        return new OutlineGrowth(outline, amount).grown();
    }

    private Outline grown() {
        List<Curve> old = outline.curves();
        List<Curve> grown = new ArrayList<>();
        boolean inwardCorner = false;
        for (int i = 0; i < old.size(); i++) {
            Curve curve = old.get(i);
            Curve next = old.get((i + 1) % old.size());
            grown.add(moved(curve));
            inwardCorner |= !join(curve, next, grown);
        }
        // Without a corner that points inwards neighbours cannot cross; far parts of a hollow outline still may.
        Outline moved = new Outline(grown);
        return inwardCorner || OutlineValidity.crossing(moved).isPresent() ? covered() : moved;
    }

    /** The line or the lines from one moved curve to the next; false if they would run backwards. */
    private boolean join(Curve curve, Curve next, List<Curve> grown) {
        double d = amount.applyAsDouble(curve);
        double e = amount.applyAsDouble(next);
        Point corner = curve.end();
        Point n = normal(curve, 1);
        Point m = normal(next, 0);
        Point from = corner.plus(d * n.x(), d * n.y());
        Point to = corner.plus(e * m.x(), e * m.y());
        if (from.distanceTo(to) < TOGETHER_MM) {
            return true;
        }
        double turn = n.x() * m.y() - n.y() * m.x();
        if (turn < -TOGETHER_MM) {
            return false;
        }
        // The point that lies as far out of both: p.n = d and p.m = e.
        Point mitre =
                turn < TOGETHER_MM ? from : corner.plus((d * m.y() - e * n.y()) / turn, (e * n.x() - d * m.x()) / turn);
        if (mitre.distanceTo(corner) <= LONGEST_MITRE * Math.max(d, e)) {
            line(from, mitre, grown);
            line(mitre, to, grown);
        } else {
            line(from, to, grown);
        }
        return true;
    }

    private static void line(Point from, Point to, List<Curve> grown) {
        if (from.distanceTo(to) >= TOGETHER_MM) {
            grown.add(new Line(from, to));
        }
    }

    private Curve moved(Curve curve) {
        double d = amount.applyAsDouble(curve);
        Point n = normal(curve, 0);
        Point m = normal(curve, 1);
        Point start = curve.start().plus(d * n.x(), d * n.y());
        Point end = curve.end().plus(d * m.x(), d * m.y());
        if (curve instanceof Arc arc) {
            // A hollow arc gets tighter; one tighter than the amount ends in its centre, which the cover sorts out.
            double radius = arc.sweep() > 0 ? arc.radius() + d : arc.radius() - d;
            return radius > TOGETHER_MM ? new Arc(start, end, arc.centre(), radius, arc.sweep()) : new Line(start, end);
        }
        return new Line(start, end);
    }

    /** What of the plane the old outline, the strip of each curve and the wedge of each outward corner cover. */
    private Outline covered() {
        Region all = Region.of(outline);
        List<Curve> old = outline.curves();
        for (int i = 0; i < old.size(); i++) {
            Curve curve = old.get(i);
            if (amount.applyAsDouble(curve) > 0) {
                all = RegionBoolean.union(all, Region.of(strip(curve)));
            }
            List<Curve> wedge = new ArrayList<>();
            if (join(curve, old.get((i + 1) % old.size()), wedge) && !wedge.isEmpty()) {
                line(wedge.get(wedge.size() - 1).end(), curve.end(), wedge);
                line(curve.end(), wedge.get(0).start(), wedge);
                if (wedge.size() > 2) {
                    all = RegionBoolean.union(all, Region.of(new Outline(wedge)));
                }
            }
        }
        return all.pieces().get(0).outer();
    }

    private Outline strip(Curve curve) {
        Curve moved = moved(curve);
        return new Outline(List.of(
                curve.reversed(), new Line(curve.start(), moved.start()), moved, new Line(moved.end(), curve.end())));
    }

    /** The unit vector out of the outline at the start (0) or the end (1) of a curve: a quarter turn right of its way. */
    static Point normal(Curve curve, int end) {
        double x;
        double y;
        if (curve instanceof Arc arc) {
            Point at = end == 0 ? arc.start() : arc.end();
            double side = Math.signum(arc.sweep()) / arc.radius();
            x = side * (at.x() - arc.centre().x());
            y = side * (at.y() - arc.centre().y());
        } else {
            double length = curve.length();
            x = (curve.end().y() - curve.start().y()) / length;
            y = -(curve.end().x() - curve.start().x()) / length;
        }
        return new Point(x, y);
    }
}
