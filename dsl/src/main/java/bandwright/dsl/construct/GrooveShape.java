// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import java.util.ArrayList;
import java.util.List;

import bandwright.dsl.geometry.plane.Curve;
import bandwright.dsl.geometry.plane.Line;
import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.geometry.plane.Region;
import bandwright.dsl.geometry.plane.RegionBoolean;
import bandwright.dsl.model.Band;
import bandwright.dsl.model.Groove;
import bandwright.dsl.model.Section;

/**
 * The tool of a full groove as a cross-section: its floor, its walls, open towards the outside (towards the finger for an
 * inside groove).
 *
 * @param floorRadius distance of the floor's deepest line from the finger's axis, mm
 */
record GrooveShape(double leftAcross, double rightAcross, double floorRadius, Region tool, Region kept) {
    /** How far the tool reaches beyond every surface: nobody has to lift a groove clear of it. */
    private static final double BEYOND_MM = 50;

    static GrooveShape of(Groove groove, Band band) {
        double inner = band.finger().innerRadiusMm();
        Outline outline = band.stations().get(0).section().outline();
        double half = groove.widthMm() / 2;
        double left = groove.acrossMm() - half;
        double right = groove.acrossMm() + half;
        SurfaceLine surface = (groove.inside()
                        ? SurfaceLine.inner(outline, groove.acrossMm())
                        : SurfaceLine.outer(outline, groove.acrossMm()))
                .orElseThrow(() -> GrooveFaults.misses(groove, groove.from().get(0)));
        double surfaceRadius = inner + surface.height();
        if (groove.inside()) {
            double floor = surfaceRadius + groove.depthMm().orElse(0);
            double fit = groove.fitMm();
            return new GrooveShape(
                    left,
                    right,
                    floor,
                    rectangle(left, inner - BEYOND_MM, right, floor),
                    rectangle(left + fit, inner - BEYOND_MM, right - fit, floor - fit));
        }
        if (groove.depthMm().isEmpty()) {
            double fit = groove.fitMm();
            return new GrooveShape(
                    left,
                    right,
                    inner,
                    rectangle(left, inner - BEYOND_MM, right, inner + BEYOND_MM),
                    rectangle(left + fit, inner - BEYOND_MM, right - fit, inner + BEYOND_MM));
        }
        double floor = surfaceRadius - groove.depthMm().getAsDouble();
        if (floor <= inner) {
            throw GrooveFaults.tooDeep(groove, band, surface.height());
        }
        double fit = groove.fitMm();
        if (groove.floor().isPresent()) {
            Section section = groove.floor().get();
            return new GrooveShape(
                    left,
                    right,
                    floor,
                    above(section, groove.acrossMm(), floor, 0),
                    above(section, groove.acrossMm(), floor, fit));
        }
        return new GrooveShape(
                left,
                right,
                floor,
                rectangle(left, floor, right, inner + BEYOND_MM),
                rectangle(left + fit, floor + fit, right - fit, inner + BEYOND_MM));
    }

    private static Region rectangle(double left, double low, double right, double high) {
        return left < right && low < high ? Region.of(Outline.rectangle(left, low, right, high)) : Region.EMPTY;
    }

    /** All that lies above a profile's lower outline, narrower by the fit on each side and raised by it. */
    private static Region above(Section section, double across, double floor, double fit) {
        List<Curve> curves = section.outline().counterClockwise().curves();
        int first = corner(curves, true);
        int last = corner(curves, false);
        List<Curve> lower = new ArrayList<>();
        for (int i = first; i != last; i = (i + 1) % curves.size()) {
            lower.add(curves.get(i).translated(across, floor + fit));
        }
        Point start = lower.get(0).start();
        Point end = lower.get(lower.size() - 1).end();
        Point highEnd = new Point(end.x(), floor + BEYOND_MM);
        Point highStart = new Point(start.x(), floor + BEYOND_MM);
        lower.add(new Line(end, highEnd));
        lower.add(new Line(highEnd, highStart));
        lower.add(new Line(highStart, start));
        Region whole = Region.of(new Outline(lower));
        return fit == 0
                ? whole
                : RegionBoolean.intersection(
                        whole, rectangle(start.x() + fit, floor, end.x() - fit, floor + BEYOND_MM));
    }

    /** The floor that a profile gives, its deepest line at y 0, as chords from the wall at the hand to that at the fingertip. */
    static List<Point> floor(Groove groove, double fit, double chordRiseMm) {
        Region whole = above(groove.floor().orElseThrow(), groove.acrossMm(), 0, fit);
        List<Point> points = new ArrayList<>(whole.pieces().get(0).outer().flattened(chordRiseMm));
        points.removeIf(point -> point.y() > BEYOND_MM - 1);
        int first = 0;
        for (int i = 1; i < points.size(); i++) {
            first = points.get(i).x() < points.get(first).x() ? i : first;
        }
        List<Point> ordered = new ArrayList<>(points.subList(first, points.size()));
        ordered.addAll(points.subList(0, first));
        return ordered;
    }

    /** The curve that starts at the lowest of the outermost corners on one side. */
    private static int corner(List<Curve> curves, boolean left) {
        int best = 0;
        for (int i = 1; i < curves.size(); i++) {
            Point here = curves.get(i).start();
            Point there = curves.get(best).start();
            double outer = left ? there.x() - here.x() : here.x() - there.x();
            if (outer > 1e-9 || (Math.abs(outer) <= 1e-9 && here.y() < there.y())) {
                best = i;
            }
        }
        return best;
    }
}
