// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.ring;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

import bandwright.dsl.check.Findings;
import bandwright.dsl.check.RingPlace;
import bandwright.dsl.construct.PartSection;
import bandwright.dsl.construct.Ring;
import bandwright.dsl.construct.StoneLayout;
import bandwright.dsl.geometry.plane.Arc;
import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.geometry.plane.Curve;
import bandwright.dsl.geometry.plane.Line;
import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.geometry.plane.Region;
import bandwright.dsl.geometry.plane.RegionBoolean;
import bandwright.dsl.material.Metal;
import bandwright.dsl.material.StoneCut;
import bandwright.dsl.model.Band;
import bandwright.dsl.model.Groove;
import bandwright.dsl.model.Prongs;
import bandwright.dsl.model.Seats;
import bandwright.dsl.model.StoneRow;
import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.quantity.QuantityFormat;
import bandwright.dsl.view.drawing.CheckMark;
import bandwright.dsl.view.drawing.Layout;
import bandwright.dsl.view.drawing.Section;

/**
 * The strip a setter marks out from: the band unrolled along the outer surface under the row, stones, pins and channel where
 * they are, and joints as far as they come up to the surface. Everything is drawn in its true size; what lies deeper than the surface is nearer together than on the strip, so
 * gaps are told in figures. The band's edges and its grooves are drawn; a change of height is not.
 */
public final class RingLayout {
    private static final double TURN = 2 * StrictMath.PI;

    /** How finely a band that changes on its way round is followed. */
    private static final int LOOKS = 180;

    private static final int CIRCLE = 48;

    /** A joint nearer to the band's edge runs down its side, mm. */
    private static final double SEEN_MM = 0.01;

    private final Ring ring;
    private final StoneLayout layout;
    private final StoneRow row;
    private final Band band;
    private final double radius;
    private final double from;
    private final double to;

    private RingLayout(Ring ring, String name) {
        this.ring = ring;
        layout = ring.layout(name);
        row = layout.row();
        band = ring.section(row.part()).band();
        radius = surfaceRadius();
        double half = layout.perLine() * layout.stepRadians() / 2;
        double middle = row.around().centredDegrees() * (StrictMath.PI / 180);
        // A full row starts with half a gap to spare, so that no stone is cut in two.
        boolean whole = layout.full() || 2 * half > 0.9 * TURN;
        double margin = 2 * row.aroundMm() / radius;
        from = whole ? firstAngle() - layout.stepRadians() / 2 : middle - half - margin;
        to = whole ? from + TURN : middle + half + margin;
    }

    /** A row's strip. */
    public static Layout of(Ring ring, String row) {
        return new RingLayout(ring, row).layout();
    }

    /** Checks that failed or are close, with a place on the strip; their depth is told in words. */
    public static List<CheckMark> checks(Ring ring, String row, Findings findings) {
        RingLayout maker = new RingLayout(ring, row);
        return PlacedChecks.of(ring, findings, maker.parts(), maker::isOn, maker::at);
    }

    /** The band's parts: what is cut of it and kept belongs to it. */
    private Set<String> parts() {
        return ring.sections().stream()
                .filter(section -> section.band().equals(band))
                .map(PartSection::name)
                .collect(Collectors.toSet());
    }

    private boolean isOn(RingPlace place) {
        double angle = place.aroundDegrees() * (StrictMath.PI / 180);
        Bounds edges = ring.outline(band, angle).bounds();
        return onStrip(angle) <= to * radius + 1e-9
                && place.acrossMm() >= edges.minX() - 1e-9
                && place.acrossMm() <= edges.maxX() + 1e-9;
    }

    private Point at(RingPlace place) {
        return new Point(onStrip(place.aroundDegrees() * (StrictMath.PI / 180)), place.acrossMm());
    }

    private Layout layout() {
        String stone =
                layout.count() + " " + row.cut().word() + " " + row.material().name() + " " + size();
        List<String> notes = notes();
        return new Layout(
                "Layout of " + row.name() + ": " + stone,
                "The band unrolled and seen from outside, fingertip up, the top of the ring at the start mark: " + stone
                        + ". " + String.join(". ", notes),
                from * radius,
                to * radius,
                180 / StrictMath.PI / radius,
                grounds(),
                stones(),
                pins(),
                slots(),
                joints(),
                dimensions(),
                notes);
    }

    private double firstAngle() {
        return layout.places().isEmpty() ? 0 : layout.places().get(0).angle();
    }

    /** From the finger's axis to the surface, where the row's first line lies. */
    private double surfaceRadius() {
        if (layout.lines().isEmpty()) {
            return band.finger().innerRadiusMm();
        }
        StoneLayout.Line line = layout.lines().get(0);
        return line.girdleRadius() + row.sinkMm() * line.axisOut();
    }

    private String size() {
        String around = mm(row.aroundMm());
        return row.cut().hasTwoSizes() ? around + " by " + mm(row.widthMm()) : around;
    }

    private List<Layout.Ground> grounds() {
        List<Layout.Ground> grounds = new ArrayList<>();
        Region outline = bandOutline();
        Metal metal = band.metal();
        grounds.add(new Layout.Ground(band.name(), metal.name(), metal.picture(), false, outline));
        for (Groove groove : ring.design().grooves()) {
            // Of one band, all its parts are seen; of several, what is cut from another is not under this row.
            boolean ours = ring.design().bands().size() == 1 || groove.from().contains(band.name());
            if (groove.inside() || !ours) {
                continue;
            }
            String name = groove.keep().map(Groove.Keep::part).orElse(groove.name());
            Metal seen = groove.keep().map(Groove.Keep::metal).orElse(metal);
            Region field = RegionBoolean.intersection(field(groove), outline);
            if (!field.isEmpty()) {
                grounds.add(new Layout.Ground(
                        name, seen.name(), seen.picture(), groove.keep().isEmpty(), field));
            }
        }
        return grounds;
    }

    private Region bandOutline() {
        int looks = band.isEven() ? 1 : LOOKS;
        List<Point> corners = new ArrayList<>();
        for (int i = 0; i <= looks; i++) {
            double angle = from + (to - from) * i / looks;
            corners.add(
                    new Point(angle * radius, ring.outline(band, angle).bounds().minX()));
        }
        for (int i = looks; i >= 0; i--) {
            double angle = from + (to - from) * i / looks;
            corners.add(
                    new Point(angle * radius, ring.outline(band, angle).bounds().maxX()));
        }
        return Region.of(Outline.polygon(corners));
    }

    /** Where a groove opens: a band of its width, on its arc and, where the strip begins elsewhere, once round before and after. */
    private Region field(Groove groove) {
        double low = groove.acrossMm() - groove.widthMm() / 2;
        double high = groove.acrossMm() + groove.widthMm() / 2;
        if (groove.around().isFull()) {
            return Region.of(Outline.rectangle(from * radius, low, to * radius, high));
        }
        double middle = groove.around().centredDegrees() * (StrictMath.PI / 180);
        double half = groove.around().degrees() / 2 * (StrictMath.PI / 180);
        Region all = Region.EMPTY;
        for (int turn = -1; turn <= 1; turn++) {
            double start = (middle - half + turn * TURN) * radius;
            double end = (middle + half + turn * TURN) * radius;
            Outline field =
                    groove.roundEnds() ? roundEnded(start, low, end, high) : Outline.rectangle(start, low, end, high);
            all = RegionBoolean.union(all, Region.of(field));
        }
        return all;
    }

    /** A slot whose ends are half-rounds within its length, as they are cut. */
    private static Outline roundEnded(double start, double low, double end, double high) {
        double round = (high - low) / 2;
        double middle = (low + high) / 2;
        double first = start + round;
        double last = end - round;
        List<Curve> curves = new ArrayList<>();
        if (last - first > 1e-9) {
            curves.add(new Line(new Point(first, low), new Point(last, low)));
        }
        Point foot = new Point(last, low);
        curves.add(Arc.around(new Point(last, middle), foot, new Point(last, high), true));
        if (last - first > 1e-9) {
            curves.add(new Line(new Point(last, high), new Point(first, high)));
        }
        curves.add(Arc.around(new Point(first, middle), new Point(first, high), new Point(first, low), true));
        return new Outline(curves);
    }

    /**
     * Where what was let in is closed, as far as that is seen from outside: a collar lies against the kept part at the groove's wall, and, where its other
     * end comes up through the surface, against its own part there; halves meet at their seams. At the band's very edge nothing is drawn: there a joint runs down
     * the side.
     */
    private List<Layout.Joint> joints() {
        List<Layout.Joint> joints = new ArrayList<>();
        for (Groove groove : ring.design().grooves()) {
            boolean ours = ring.design().bands().size() == 1 || groove.from().contains(band.name());
            Groove.LetIn way = groove.letIn().orElse(null);
            if (!ours || groove.inside() || groove.keep().isEmpty()) {
                continue;
            }
            double low = groove.acrossMm() - groove.widthMm() / 2;
            double high = groove.acrossMm() + groove.widthMm() / 2;
            if (way instanceof Groove.LetInFrom let) {
                String name = "joint of " + let.collar();
                along(joints, groove, name, let.fingertip() ? high : low);
                Bounds collar = ring.bounds(let.collar());
                Bounds edges = ring.outline(band, firstAngle()).bounds();
                double other = let.fingertip() ? collar.maxX() : collar.minX();
                double edge = let.fingertip() ? edges.maxX() : edges.minX();
                if (Math.abs(edge - other) > SEEN_MM) {
                    along(joints, groove, name, other);
                }
            } else if (way instanceof Groove.LetInHalves halves) {
                for (double degrees : new double[] {halves.degrees(), halves.degrees() + 180}) {
                    double x = onStrip(degrees * (StrictMath.PI / 180));
                    if (x <= to * radius) {
                        joints.add(new Layout.Joint(
                                "seams of " + groove.keep().get().part(),
                                List.of(new Point(x, low), new Point(x, high))));
                    }
                }
            }
        }
        return joints;
    }

    /** A joint at a place across, as far as its groove goes round. */
    private void along(List<Layout.Joint> joints, Groove groove, String name, double across) {
        if (groove.around().isFull()) {
            joints.add(
                    new Layout.Joint(name, List.of(new Point(from * radius, across), new Point(to * radius, across))));
            return;
        }
        double middle = groove.around().centredDegrees() * (StrictMath.PI / 180);
        double half = groove.around().degrees() / 2 * (StrictMath.PI / 180);
        for (int turn = -1; turn <= 1; turn++) {
            double start = Math.max(from, middle - half + turn * TURN);
            double end = Math.min(to, middle + half + turn * TURN);
            if (end > start) {
                joints.add(new Layout.Joint(
                        name, List.of(new Point(start * radius, across), new Point(end * radius, across))));
            }
        }
    }

    private List<Layout.Stone> stones() {
        List<Layout.Stone> stones = new ArrayList<>();
        for (StoneLayout.Place place : layout.places()) {
            Point centre = new Point(onStrip(place.angle()), place.line().across());
            stones.add(new Layout.Stone(stones.size() + 1, centre, girdle().translated(centre.x(), centre.y())));
        }
        return stones;
    }

    /** Along the strip, wherever it begins. */
    private double onStrip(double angle) {
        double turns = Math.floor((angle - from) / TURN + 1e-9);
        return (angle - turns * TURN) * radius;
    }

    private Outline girdle() {
        double along = row.aroundMm() / 2;
        double across = row.widthMm() / 2;
        if (row.cut() == StoneCut.PRINCESS || row.cut() == StoneCut.BAGUETTE) {
            return Outline.rectangle(-along, -across, along, across);
        }
        return ellipse(along, across);
    }

    private static Outline ellipse(double along, double across) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < CIRCLE; i++) {
            double turn = TURN * i / CIRCLE;
            points.add(new Point(along * StrictMath.cos(turn), across * StrictMath.sin(turn)));
        }
        return Outline.polygon(points);
    }

    private List<Outline> pins() {
        List<Outline> pins = new ArrayList<>();
        for (Prongs prongs : ring.design().prongs()) {
            if (!prongs.row().equals(row.name())) {
                continue;
            }
            Outline pin = ellipse(prongs.diameterMm() / 2, prongs.diameterMm() / 2);
            for (int i = 0; i < layout.gaps().size(); i++) {
                StoneLayout.Place gap = layout.gaps().get(i);
                double off = ring.pinAcross(prongs, layout.even() ? 0 : i);
                for (double side : prongs.perGap() == 1 ? new double[] {0} : new double[] {-off, off}) {
                    pins.add(pin.translated(onStrip(gap.angle()), gap.line().across() + side));
                }
            }
        }
        return pins;
    }

    private List<List<Point>> slots() {
        List<List<Point>> slots = new ArrayList<>();
        for (Seats seats : ring.design().seats()) {
            if (!seats.row().equals(row.name()) || seats.channel().isEmpty()) {
                continue;
            }
            double half = seats.channel().get().widthMm() / 2;
            for (StoneLayout.Line line : layout.lines()) {
                double end = row.aroundMm() / 2 + seats.clearanceMm();
                double start = layout.full() ? from * radius : line.firstRadians() * radius - end;
                double stop = layout.full()
                        ? to * radius
                        : (line.firstRadians() + (layout.perLine() - 1) * layout.stepRadians()) * radius + end;
                for (double side : new double[] {-half, half}) {
                    slots.add(List.of(new Point(start, line.across() + side), new Point(stop, line.across() + side)));
                }
            }
        }
        return slots;
    }

    private List<Section.Dimension> dimensions() {
        List<Section.Dimension> dimensions = new ArrayList<>();
        double angle = firstAngle();
        Bounds edges = ring.outline(band, angle).bounds();
        double right = to * radius;
        dimensions.add(new Section.Dimension(
                Section.Direction.OUT,
                new Point(right, edges.minX()),
                new Point(right, edges.maxX()),
                "width " + mm(edges.maxX() - edges.minX())));
        if (!layout.places().isEmpty()) {
            StoneLayout.Place first = layout.places().get(0);
            double x = onStrip(first.angle());
            double low = first.line().across() - row.widthMm() / 2;
            dimensions.add(across("stone " + mm(row.aroundMm()), x - row.aroundMm() / 2, x + row.aroundMm() / 2, low));
            if (layout.perLine() > 1) {
                dimensions.add(
                        across("step " + mm(layout.stepRadians() * radius), x, x + layout.stepRadians() * radius, low));
            }
        }
        return dimensions;
    }

    private static Section.Dimension across(String label, double from, double to, double level) {
        return new Section.Dimension(Section.Direction.ACROSS, new Point(from, level), new Point(to, level), label);
    }

    private List<String> notes() {
        List<String> notes = new ArrayList<>();
        String step = QuantityFormat.format(Quantity.degrees(layout.stepRadians() * (180 / StrictMath.PI)));
        StringBuilder spacing = new StringBuilder(
                layout.perLine() > 1
                        ? "step " + step + " or on the strip " + mm(layout.stepRadians() * radius)
                        : "one stone");
        layout.pitchMm()
                .ifPresent(pitch ->
                        spacing.append(", straight from stone to stone ").append(mm(pitch)));
        layout.gapMm().ifPresent(gap -> spacing.append(", smallest gap ").append(mm(gap)));
        notes.add(spacing.toString());
        ring.design().prongs().stream()
                .filter(prongs -> prongs.row().equals(row.name()))
                .forEach(prongs -> notes.add(prongs.name() + ": pins as cast, " + mm(prongs.diameterMm()) + " thick, "
                        + prongs.perGap() + " in a gap"));
        notes.add("seen from outside, fingertip up; strip " + mm((to - from) * radius) + " long at true size, unrolled "
                + mm(radius) + " from the finger's axis");
        return notes;
    }

    private static String mm(double length) {
        return QuantityFormat.format(Quantity.millimetres(length));
    }
}
