// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;

import bandwright.dsl.geometry.operation.Loft;
import bandwright.dsl.geometry.plane.Arc;
import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.model.Band;
import bandwright.dsl.model.Groove;

/**
 * The tools of a groove that takes only part of the round, or is cut from a band that changes: its cross-section swept along it, its floor at
 * each angle by the depth below the surface in the groove's middle there. Square ends are radial planes. Round ends are half-rounds
 * in the surface unrolled at the groove's middle, within the arc.
 */
final class GrooveTools {
    /** A facet round the ring, radians. */
    private static final double STEP = 2 * StrictMath.PI / BodyMaker.FACETS;

    /** How far tools reach beyond every surface, mm. */
    private static final double BEYOND_MM = 2;

    private final Groove groove;
    private final Band band;
    private final DoubleFunction<Outline> outline;
    private final Surfaces surfaces;
    private final double inner;
    private final double deep;
    private final double high;
    private final double far;

    /** @param outline the band's cross-section at an angle, y from the finger */
    GrooveTools(Groove groove, Band band, DoubleFunction<Outline> outline, Surfaces surfaces) {
        this.groove = groove;
        this.band = band;
        this.outline = outline;
        this.surfaces = surfaces;
        this.inner = band.finger().innerRadiusMm();
        this.deep = inner / 2;
        double height = 0;
        double width = 0;
        boolean reaches = false;
        for (Band.Station station : band.stations()) {
            Bounds box = station.section().outline().bounds();
            height = Math.max(height, box.maxY());
            width = Math.max(width, Math.max(box.maxX(), -box.minX()));
            reaches |= groove.acrossMm() >= box.minX() && groove.acrossMm() <= box.maxX();
        }
        if (!reaches) {
            throw GrooveFaults.misses(groove, groove.from().get(0));
        }
        this.high = inner + height + BEYOND_MM;
        this.far = width + groove.widthMm() + BEYOND_MM;
    }

    /** What the groove takes away. */
    Solid.Tool tool() {
        return tool(0).orElseThrow();
    }

    /** What of it is kept: smaller by the fit on every side; empty if the fit leaves nothing. */
    Optional<Solid.Tool> kept() {
        return tool(groove.fitMm());
    }

    private Optional<Solid.Tool> tool(double fit) {
        if (groove.widthMm() <= 2 * fit) {
            return Optional.empty();
        }
        List<Slice> slices = slices(fit);
        if (slices.isEmpty()) {
            return Optional.empty();
        }
        refuseTooDeep(slices);
        boolean profiled = groove.floor().isPresent() && groove.depthMm().isPresent() && !groove.inside();
        Loft square = loft(slices, fit);
        if (!profiled) {
            return Optional.of(new Solid.Tool(square, Optional.empty()));
        }
        List<Point> floor = GrooveShape.floor(groove, fit, BodyMaker.CHORD_RISE_MM);
        List<Loft.Section> sections = new ArrayList<>();
        for (Slice slice : slices) {
            double level = floor(slice.angle);
            List<Point> points = new ArrayList<>();
            floor.forEach(point -> points.add(point.plus(0, level)));
            points.add(new Point(floor.get(floor.size() - 1).x(), high));
            points.add(new Point(floor.get(0).x(), high));
            sections.add(new Loft.Section(slice.angle, points));
        }
        List<Integer> faces = new ArrayList<>();
        for (int i = 0; i < floor.size() - 1; i++) {
            faces.add(face("floor"));
        }
        faces.addAll(List.of(face("wall at the fingertip"), face("top"), face("wall at the hand")));
        faces.addAll(List.of(face("first end"), face("last end")));
        Loft loft = new Loft(sections, groove.around().isFull(), faces);
        boolean round = groove.roundEnds() && !groove.around().isFull();
        return Optional.of(new Solid.Tool(loft, round ? Optional.of(square(slices, deep)) : Optional.empty()));
    }

    private Loft loft(List<Slice> slices, double fit) {
        List<Loft.Section> sections = new ArrayList<>();
        for (Slice slice : slices) {
            double low = groove.depthMm().isEmpty() || groove.inside() ? deep : floor(slice.angle) + fit;
            double top = groove.inside() && groove.depthMm().isPresent() ? floor(slice.angle) - fit : high;
            sections.add(
                    section(slice.angle, groove.acrossMm() - slice.half, low, groove.acrossMm() + slice.half, top));
        }
        return new Loft(sections, groove.around().isFull(), faces());
    }

    private Loft square(List<Slice> slices, double low) {
        List<Loft.Section> sections = slices.stream()
                .map(slice ->
                        section(slice.angle, groove.acrossMm() - slice.half, low, groove.acrossMm() + slice.half, high))
                .toList();
        return new Loft(sections, groove.around().isFull(), faces());
    }

    /** The flank on one side, down to the level of the floor (for a groove on the inner wall up to it), with some room over that. */
    Solid.Tool side(boolean fingertip, double room) {
        List<Loft.Section> sections = new ArrayList<>();
        for (Slice slice : slices(0)) {
            // A square floor has nothing below it that the flank could take: from the middle on, no two walls lie on
            // each other.
            double edge = groove.floor().isPresent() ? slice.half : 0;
            double low = groove.depthMm().isEmpty() || groove.inside() ? deep : floor(slice.angle) + room;
            double top = groove.inside() && groove.depthMm().isPresent() ? floor(slice.angle) - room : high;
            double from = fingertip ? groove.acrossMm() + edge : -far;
            double to = fingertip ? far : groove.acrossMm() - edge;
            sections.add(section(slice.angle, from, low, to, top));
        }
        return new Solid.Tool(new Loft(sections, groove.around().isFull(), faces()), Optional.empty());
    }

    private static Loft.Section section(double angle, double left, double low, double right, double high) {
        return new Loft.Section(
                angle,
                List.of(new Point(left, low), new Point(right, low), new Point(right, high), new Point(left, high)));
    }

    private List<Integer> faces() {
        return List.of(
                face(groove.inside() ? "bottom" : "floor"),
                face("wall at the fingertip"),
                face(groove.inside() ? "floor" : "top"),
                face("wall at the hand"),
                face("first end"),
                face("last end"));
    }

    private int face(String what) {
        return surfaces.number(groove.name(), what);
    }

    /** The surface from which the depth counts; where a narrow place of the band does not reach the groove's middle, at its edge. */
    private SurfaceLine surface(double angle) {
        Outline here = outline.apply(angle);
        Bounds box = here.bounds();
        double across = Math.max(box.minX() + 1e-6, Math.min(box.maxX() - 1e-6, groove.acrossMm()));
        return (groove.inside() ? SurfaceLine.inner(here, across) : SurfaceLine.outer(here, across))
                .orElseThrow(() -> GrooveFaults.misses(groove, groove.from().get(0)));
    }

    private void refuseTooDeep(List<Slice> slices) {
        double thinnest = slices.stream()
                .mapToDouble(slice -> surface(slice.angle).height())
                .min()
                .orElse(0);
        if (!groove.inside() && groove.depthMm().orElse(0) >= thinnest) {
            throw GrooveFaults.tooDeep(groove, band, thinnest);
        }
    }

    private double floor(double angle) {
        double height = surface(angle).height();
        double depth = groove.depthMm().orElse(0);
        return inner + (groove.inside() ? height + depth : height - depth);
    }

    /** A place along the groove and half its width there. */
    private record Slice(double angle, double half) {}

    private List<Slice> slices(double fit) {
        double half = groove.widthMm() / 2 - fit;
        List<Slice> slices = new ArrayList<>();
        if (groove.around().isFull()) {
            for (int i = 0; i < BodyMaker.FACETS; i++) {
                slices.add(new Slice((i + 0.5) * STEP, half));
            }
            return slices;
        }
        double middle = groove.around().centredDegrees() * (StrictMath.PI / 180);
        double arm = groove.around().degrees() * (StrictMath.PI / 360);
        double firstRadius = inner + surface(middle - arm).height();
        double lastRadius = inner + surface(middle + arm).height();
        double round = groove.roundEnds() ? half : 0;
        double first = middle - arm + (fit + round) / firstRadius;
        double last = middle + arm - (fit + round) / lastRadius;
        if (last <= first) {
            if (groove.roundEnds() && fit == 0) {
                throw GrooveFaults.roundEndsTooLong(groove, 2 * arm * Math.min(firstRadius, lastRadius));
            }
            return List.of();
        }
        List<Point> end = groove.roundEnds() ? halfRound(half) : List.of();
        for (int i = end.size() - 1; i >= 0; i--) {
            slices.add(
                    new Slice(first - end.get(i).x() / firstRadius, end.get(i).y()));
        }
        int steps = Math.max(1, (int) Math.ceil((last - first) / STEP - 1e-9));
        for (int i = 0; i <= steps; i++) {
            slices.add(new Slice(first + i * (last - first) / steps, half));
        }
        end.forEach(point -> slices.add(new Slice(last + point.x() / lastRadius, point.y())));
        return slices;
    }

    /** Corners of a half-round between its foot and its tip, where a chord stands across: as chords that keep its area. */
    private static List<Point> halfRound(double radius) {
        Arc arc = Arc.around(new Point(0, 0), new Point(0, radius), new Point(0, -radius), false);
        List<Point> points = new ArrayList<>();
        int chords = 25;
        arc.divide(chords, points::add);
        return points.subList(0, chords / 2);
    }
}
