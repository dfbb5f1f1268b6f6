// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;

import bandwright.dsl.construct.PartSection;
import bandwright.dsl.geometry.plane.Point;

/** Where turned parts have metal at a place across, on outlines whose arcs are replaced by chords that leave them by less than 0.0001 mm. */
final class Heights {
    private static final double CHORD_MM = 1e-4;

    /** So far beside a corner a section is looked at: on a wall it has two heights. */
    private static final double BESIDE_MM = 1e-6;

    private final List<List<List<Point>>> parts = new ArrayList<>();

    Heights(List<PartSection> turned) {
        for (PartSection part : turned) {
            parts.add(part.region().pieces().stream()
                    .flatMap(piece -> piece.outlines().stream())
                    .map(outline -> outline.flattened(CHORD_MM))
                    .toList());
        }
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
