// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import bandwright.dsl.geometry.operation.Loft;
import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.geometry.plane.Region;

/**
 * From where to where, away from the finger's axis, a body reaches at one place round the ring and across. Known without making the
 * body: a tool lowers the outer surface to its floor where it takes it away, or raises the inner one.
 */
record Reach(SurfaceLine low, SurfaceLine high) {
    private static final double TURN = 2 * StrictMath.PI;

    /** The slope of a surface made of chords is taken over this much to both sides, mm: more than a chord. */
    private static final double SLOPE_OVER_MM = 0.15;

    static Optional<Reach> of(Solid solid, double radians, double across) {
        if (solid instanceof Solid.Turned turned) {
            return of(turned.region(), across);
        } else if (solid instanceof Solid.Lofted lofted) {
            return of(lofted.loft(), radians, across);
        } else if (solid instanceof Solid.Less less) {
            return of(less.body(), radians, across)
                    .flatMap(body ->
                            less.tool().at(radians, across).map(body::less).orElse(Optional.of(body)));
        } else if (solid instanceof Solid.Taken taken) {
            return of(taken.body(), radians, across)
                    .flatMap(body -> taken.tool().at(radians, across).flatMap(body::and));
        } else if (solid instanceof Solid.Joined joined) {
            return joined.bodies().stream()
                    .flatMap(body -> of(body, radians, across).stream())
                    .max(Comparator.comparingDouble(reach -> reach.high.height()));
        }
        return of(((Solid.Piece) solid).body(), radians, across);
    }

    static Optional<Reach> of(Region region, double across) {
        return region.pieces().stream()
                .flatMap(piece -> SurfaceLine.outer(piece.outer(), across).stream()
                        .flatMap(high ->
                                SurfaceLine.inner(piece.outer(), across).map(low -> new Reach(low, high)).stream()))
                .max(Comparator.comparingDouble(reach -> reach.high.height()));
    }

    static Optional<Reach> of(Loft loft, double radians, double across) {
        return section(loft, radians).flatMap(points -> of(Outline.polygon(points), across));
    }

    private static Optional<Reach> of(Outline polygon, double across) {
        Bounds box = polygon.bounds();
        double left = Math.max(across - SLOPE_OVER_MM, box.minX());
        double right = Math.min(across + SLOPE_OVER_MM, box.maxX());
        Optional<SurfaceLine> low = SurfaceLine.inner(polygon, across);
        Optional<SurfaceLine> high = SurfaceLine.outer(polygon, across);
        if (low.isEmpty() || high.isEmpty() || left >= right) {
            return Optional.empty();
        }
        return Optional.of(new Reach(
                facing(low.get(), SurfaceLine.inner(polygon, left), SurfaceLine.inner(polygon, right), -1),
                facing(high.get(), SurfaceLine.outer(polygon, left), SurfaceLine.outer(polygon, right), 1)));
    }

    private static SurfaceLine facing(
            SurfaceLine here, Optional<SurfaceLine> left, Optional<SurfaceLine> right, int side) {
        if (left.isEmpty() || right.isEmpty()) {
            return here;
        }
        double slope = (right.get().height() - left.get().height())
                / (right.get().across() - left.get().across());
        double size = Math.sqrt(1 + slope * slope);
        return new SurfaceLine(here.across(), here.height(), -side * slope / size, side / size);
    }

    private Optional<Reach> less(Reach tool) {
        boolean fromOutside = tool.low.height() < high.height() && high.height() <= tool.high.height();
        boolean fromInside = tool.low.height() <= low.height() && low.height() < tool.high.height();
        Reach rest = new Reach(fromInside ? tool.high.turned() : low, fromOutside ? tool.low.turned() : high);
        return rest.low.height() < rest.high.height() ? Optional.of(rest) : Optional.empty();
    }

    private Optional<Reach> and(Reach tool) {
        Reach both = new Reach(
                tool.low.height() > low.height() ? tool.low : low,
                tool.high.height() < high.height() ? tool.high : high);
        return both.low.height() < both.high.height() ? Optional.of(both) : Optional.empty();
    }

    /** The polygon at an angle, between the two nearest that are given. */
    private static Optional<List<Point>> section(Loft loft, double radians) {
        List<Loft.Section> sections = loft.sections();
        double first = sections.get(0).radians();
        double angle = radians - TURN * Math.floor((radians - first) / TURN);
        int s = 0;
        while (s + 1 < sections.size() && sections.get(s + 1).radians() < angle) {
            s++;
        }
        boolean last = s + 1 == sections.size();
        if (last && !loft.joined()) {
            return Optional.empty();
        }
        double next = last ? first + TURN : sections.get(s + 1).radians();
        double share =
                (angle - sections.get(s).radians()) / (next - sections.get(s).radians());
        return Optional.of(
                mixed(sections.get(s).points(), sections.get(last ? 0 : s + 1).points(), share));
    }

    private static List<Point> mixed(List<Point> from, List<Point> to, double share) {
        List<Point> points = new ArrayList<>(from.size());
        for (int i = 0; i < from.size(); i++) {
            Point a = from.get(i);
            points.add(
                    a.plus(share * (to.get(i).x() - a.x()), share * (to.get(i).y() - a.y())));
        }
        return points;
    }
}
