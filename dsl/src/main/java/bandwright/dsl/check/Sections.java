// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

import bandwright.dsl.construct.PartSection;
import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.geometry.plane.Region;

/** Lengths in cross-sections, on outlines whose arcs are replaced by chords that leave them by less than a micrometre. */
final class Sections {
    private static final double CHORD_MM = 1e-3;

    private Sections() {}

    /** From a point in the metal to where it ends, mm; nothing for a point outside. */
    static OptionalDouble toTheEnd(List<Region> regions, Point from, double dx, double dy) {
        return toTheEnd(regions, from, dx, dy, 0);
    }

    /** The same over joints so wide between parts, mm: what fills them counts as metal. */
    static OptionalDouble toTheEnd(List<Region> regions, Point from, double dx, double dy, double joint) {
        OptionalDouble end = OptionalDouble.empty();
        double reached = 0;
        boolean further = true;
        // From part to part, where they lie against each other.
        while (further) {
            further = false;
            for (Region region : regions) {
                List<Double> ways = crossings(region, from, dx, dy);
                for (int i = 0; i + 1 < ways.size(); i += 2) {
                    boolean reaches = ways.get(i) <= reached + (end.isPresent() ? joint : 0) + 1e-6;
                    if (reaches && ways.get(i + 1) > reached + 1e-6) {
                        reached = ways.get(i + 1);
                        end = OptionalDouble.of(reached);
                        further = true;
                    }
                }
            }
        }
        return end;
    }

    /** Where a line meets the region's outlines, as ways along it, rising: it enters at the first, leaves at the second, and so on. */
    private static List<Double> crossings(Region region, Point from, double dx, double dy) {
        List<Double> ways = new ArrayList<>();
        for (Region.Piece piece : region.pieces()) {
            for (Outline outline : piece.outlines()) {
                List<Point> points = outline.flattened(CHORD_MM);
                for (int i = 0; i < points.size(); i++) {
                    Point a = points.get(i);
                    Point b = points.get((i + 1) % points.size());
                    double sideA = (a.x() - from.x()) * dy - (a.y() - from.y()) * dx;
                    double sideB = (b.x() - from.x()) * dy - (b.y() - from.y()) * dx;
                    if (sideA < 0 != sideB < 0) {
                        double share = sideA / (sideA - sideB);
                        double x = a.x() + share * (b.x() - a.x()) - from.x();
                        double y = a.y() + share * (b.y() - a.y()) - from.y();
                        ways.add(x * dx + y * dy);
                    }
                }
            }
        }
        ways.sort(Double::compare);
        return ways;
    }

    /** Sections of all parts of a band, if each is one turned all the way round. */
    static List<Region> turned(List<PartSection> parts) {
        return parts.stream().map(PartSection::region).toList();
    }
}
