// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.UnaryOperator;

import bandwright.dsl.construct.PartSection;
import bandwright.dsl.construct.StoneLayout;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.geometry.plane.Region;

/** Where turned parts have metal at a place across, on outlines whose arcs are replaced by chords that leave them by less than 0.0001 mm. */
final class Heights {
    private static final double CHORD_MM = 1e-4;

    /** So far beside a corner a section is looked at: on a wall it has two heights. */
    private static final double BESIDE_MM = 1e-6;

    private final List<List<List<Point>>> parts = new ArrayList<>();

    Heights(List<PartSection> turned) {
        this(Sections.turned(turned), UnaryOperator.identity());
    }

    private Heights(List<Region> sections, UnaryOperator<Point> seen) {
        for (Region section : sections) {
            parts.add(section.pieces().stream()
                    .flatMap(piece -> piece.outlines().stream())
                    .map(outline ->
                            outline.flattened(CHORD_MM).stream().map(seen).toList())
                    .toList());
        }
    }

    /** Of sections of parts at one place round the ring. */
    static Heights of(List<Region> sections) {
        return new Heights(sections, UnaryOperator.identity());
    }

    /**
     * The same as a stone of a line sees it: across is along its girdle's plane from the girdle's middle, positive to the fingertip of an upright
     * stone, and heights are along its axis from that plane.
     */
    static Heights ofSeat(List<Region> sections, StoneLayout.Line line) {
        return new Heights(sections, point -> {
            double x = point.x() - line.across();
            double y = point.y() - line.girdleRadius();
            return new Point(x * line.axisOut() - y * line.axisAcross(), x * line.axisAcross() + y * line.axisOut());
        });
    }

    /** From where to where there is metal, mm from the finger's axis. */
    record Span(double from, double to) {}

    /** Spans at a place across, rising; those of parts that lie against each other are one. */
    List<Span> at(double across) {
        List<Span> spans = new ArrayList<>();
        for (List<List<Point>> outlines : parts) {
            List<Double> heights = new ArrayList<>();
            for (List<Point> points : outlines) {
                for (int i = 0; i < points.size(); i++) {
                    Point a = points.get(i);
                    Point b = points.get((i + 1) % points.size());
                    if (a.x() < across != b.x() < across) {
                        heights.add(a.y() + (across - a.x()) / (b.x() - a.x()) * (b.y() - a.y()));
                    }
                }
            }
            heights.sort(Double::compare);
            for (int i = 0; i + 1 < heights.size(); i += 2) {
                spans.add(new Span(heights.get(i), heights.get(i + 1)));
            }
        }
        spans.sort((one, other) -> Double.compare(one.from, other.from));
        List<Span> joined = new ArrayList<>();
        for (Span span : spans) {
            int last = joined.size() - 1;
            if (last >= 0 && span.from <= joined.get(last).to + 2 * CHORD_MM) {
                joined.set(last, new Span(joined.get(last).from, Math.max(span.to, joined.get(last).to)));
            } else {
                joined.add(span);
            }
        }
        return joined;
    }

    /** From the lowest to the highest metal. */
    Optional<Span> whole(double across) {
        List<Span> spans = at(across);
        return spans.isEmpty()
                ? Optional.empty()
                : Optional.of(new Span(spans.get(0).from, spans.get(spans.size() - 1).to));
    }

    /** How far it reaches on one side, 1 to the fingertip or -1 to the hand; negative if not even to the middle. */
    double end(double side) {
        double end = Double.NEGATIVE_INFINITY;
        for (List<List<Point>> outlines : parts) {
            for (List<Point> points : outlines) {
                for (Point point : points) {
                    end = Math.max(end, side * point.x());
                }
            }
        }
        return end;
    }

    /** Places just beside each corner, rising: between them heights change evenly. */
    NavigableSet<Double> places() {
        NavigableSet<Double> places = new TreeSet<>();
        for (List<List<Point>> outlines : parts) {
            for (List<Point> points : outlines) {
                for (Point point : points) {
                    places.add(point.x() - BESIDE_MM);
                    places.add(point.x() + BESIDE_MM);
                }
            }
        }
        return places;
    }
}
