// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.plane;

import java.util.ArrayList;
import java.util.List;

import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;

/**
 * Remembers which curve each chord stands for and turns rings of chords back into outlines of those curves.
 *
 * <ol>
 *   <li>Every edge of a ring lies on a chord; the chord names its curve.
 *   <li>Edges in a row on one curve become one piece of it.
 *   <li>Where two pieces meet, the corner is an old end of one of the curves if one is there, else the crossing of the two
 *       whole lines or circles nearest to the chords' crossing.
 * </ol>
 */
final class CurveRefit {
    /** How near an edge's ends must lie to its chord; the overlay's own rounding is far below. */
    private static final double ON_CHORD_MM = 1e-7;

    private record Chord(Curve curve, Coordinate from, Coordinate to) {
        boolean holds(Coordinate point) {
            double dx = to.x - from.x;
            double dy = to.y - from.y;
            double squared = dx * dx + dy * dy;
            double along = ((point.x - from.x) * dx + (point.y - from.y) * dy) / squared;
            double clamped = Math.max(0, Math.min(1, along));
            double offX = from.x + clamped * dx - point.x;
            double offY = from.y + clamped * dy - point.y;
            return offX * offX + offY * offY < ON_CHORD_MM * ON_CHORD_MM;
        }

        boolean along(Coordinate a, Coordinate b) {
            return (b.x - a.x) * (to.x - from.x) + (b.y - a.y) * (to.y - from.y) > 0;
        }
    }

    /** Edges in a row that lie on one curve. */
    private static final class Run {
        final Curve curve;
        final Coordinate from;
        Coordinate to;

        Run(Curve curve, Coordinate from, Coordinate to) {
            this.curve = curve;
            this.from = from;
            this.to = to;
        }
    }

    private final List<Chord> chords = new ArrayList<>();

    /** The corners of a ring of chords inscribed in the outline, the first repeated at the end. */
    Coordinate[] chords(Outline outline, double riseMm) {
        List<Coordinate> ring = new ArrayList<>();
        Coordinate first = coordinate(outline.curves().get(0).start());
        Coordinate last = first;
        ring.add(first);
        for (int c = 0; c < outline.curves().size(); c++) {
            Curve curve = outline.curves().get(c);
            boolean closing = c == outline.curves().size() - 1;
            for (Point point : inscribed(curve, riseMm)) {
                Coordinate next = closing && point.equals(curve.end()) ? first : coordinate(point);
                chords.add(new Chord(curve, last, next));
                ring.add(next);
                last = next;
            }
        }
        return ring.toArray(Coordinate[]::new);
    }

    private static List<Point> inscribed(Curve curve, double riseMm) {
        if (!(curve instanceof Arc arc)) {
            return List.of(curve.end());
        }
        double step = 2 * StrictMath.acos(Math.max(0, 1 - riseMm / arc.radius()));
        int count = Math.max(4, (int) Math.ceil(Math.abs(arc.sweep()) / Math.max(step, 1e-4)));
        List<Point> points = new ArrayList<>();
        for (int i = 1; i < count; i++) {
            points.add(arc.at((double) i / count));
        }
        points.add(arc.end());
        return points;
    }

    /** The outline that a ring of an overlay's result stands for. */
    Outline outline(Coordinate[] ring) {
        List<Run> runs = runs(ring);
        List<Point> corners = new ArrayList<>();
        for (int i = 0; i < runs.size(); i++) {
            Run before = runs.get((i + runs.size() - 1) % runs.size());
            corners.add(corner(before.curve, runs.get(i).curve, runs.get(i).from));
        }
        List<Curve> curves = new ArrayList<>();
        for (int i = 0; i < runs.size(); i++) {
            curves.add(runs.get(i).curve.between(corners.get(i), corners.get((i + 1) % runs.size())));
        }
        return new Outline(curves);
    }

    private List<Run> runs(Coordinate[] ring) {
        List<Run> runs = new ArrayList<>();
        Curve current = null;
        for (int i = 0; i + 1 < ring.length; i++) {
            Curve curve = curveUnder(ring[i], ring[i + 1], current);
            if (curve.equals(current)) {
                runs.get(runs.size() - 1).to = ring[i + 1];
            } else {
                runs.add(new Run(curve, ring[i], ring[i + 1]));
                current = curve;
            }
        }
        Run first = runs.get(0);
        Run last = runs.get(runs.size() - 1);
        if (runs.size() > 1 && first.curve.equals(last.curve)) {
            runs.set(0, new Run(first.curve, last.from, first.to));
            runs.remove(runs.size() - 1);
        }
        return runs;
    }

    /** The curve under an edge, in the edge's direction; the curve of the edge before goes first where two coincide. */
    private Curve curveUnder(Coordinate a, Coordinate b, @Nullable Curve before) {
        Curve found = null;
        for (Chord chord : chords) {
            if (chord.holds(a) && chord.holds(b)) {
                Curve curve = chord.along(a, b) ? chord.curve : chord.curve.reversed();
                if (curve.equals(before)) {
                    return curve;
                }
                found = found == null ? curve : found;
            }
        }
        return found == null ? new Line(new Point(a.x, a.y), new Point(b.x, b.y)) : found;
    }

    private static Point corner(Curve before, Curve after, Coordinate near) {
        Point point = new Point(near.x, near.y);
        for (Point end : List.of(before.start(), before.end(), after.start(), after.end())) {
            if (end.distanceTo(point) < ON_CHORD_MM) {
                return end;
            }
        }
        return CurveCrossing.nearest(before, after, point);
    }

    private static Coordinate coordinate(Point point) {
        return new Coordinate(point.x(), point.y());
    }
}
