// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.ring;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;

import bandwright.dsl.check.Findings;
import bandwright.dsl.construct.Body;
import bandwright.dsl.construct.PartSection;
import bandwright.dsl.construct.Ring;
import bandwright.dsl.construct.StoneLayout;
import bandwright.dsl.construct.SurfaceLine;
import bandwright.dsl.geometry.operation.HalfPlaneSlice;
import bandwright.dsl.geometry.plane.Arc;
import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.geometry.plane.Line;
import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.geometry.plane.Region;
import bandwright.dsl.geometry.plane.RegionBoolean;
import bandwright.dsl.geometry.solid.Mesh;
import bandwright.dsl.material.StoneCut;
import bandwright.dsl.model.Band;
import bandwright.dsl.model.Groove;
import bandwright.dsl.model.Prongs;
import bandwright.dsl.model.StoneRow;
import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.quantity.QuantityFormat;
import bandwright.dsl.view.drawing.CheckMark;
import bandwright.dsl.view.drawing.Section;
import bandwright.dsl.view.render.StoneModel;

/** The cut through a ring at an angle, as data for a drawing. */
public final class RingSection {
    /** What lies no further from the cut than this is pointed at in it, mm. */
    private static final double NEAR_MM = 0.5;

    /** Heights that differ by less are one, mm. */
    private static final double SAME_MM = 0.005;

    /** Pins no further behind the cut than so many stones are seen there. */
    private static final double SEEN_STONES = 2;

    /** Slices of one solid that are smaller are none, mm^2. */
    private static final double SPECK_MM2 = 0.001;

    private final Ring ring;
    private final Set<String> parts;
    private final double radians;
    private final double inner;

    private RingSection(Ring ring, Set<String> parts, double degrees) {
        this.ring = ring;
        this.parts = parts;
        this.radians = degrees * (StrictMath.PI / 180);
        this.inner = ring.sections().iterator().next().band().finger().innerRadiusMm();
    }

    public static Section of(Ring ring, Set<String> parts, double degrees) {
        return new RingSection(ring, parts, degrees).section(degrees);
    }

    /** Checks that failed or are close, with a place so near to the cut that it shows there. */
    public static List<CheckMark> checks(Ring ring, Set<String> parts, double degrees, Findings findings) {
        double inner = ring.sections().iterator().next().band().finger().innerRadiusMm();
        return PlacedChecks.of(
                ring,
                findings,
                parts,
                place -> {
                    double off = (place.aroundDegrees() - degrees) * (StrictMath.PI / 180);
                    return StrictMath.cos(off) > 0
                            && Math.abs(StrictMath.sin(off)) * (inner + place.outMm()) <= NEAR_MM;
                },
                place -> new Point(place.acrossMm(), place.outMm()));
    }

    private Section section(double degrees) {
        List<Section.Part> drawn = new ArrayList<>();
        for (Body body : ring.bodies()) {
            if (parts.contains(body.name())) {
                PartSection section = body.section();
                Region cut = cut(ring, body.name());
                if (cut.isEmpty()) {
                    // A part that takes only some of the round is not met everywhere.
                    continue;
                }
                // One after the other is taken off, so that what two pins share is drawn once.
                List<Prongs> pins = cutPins(body.name());
                List<Section.Part> cutPins = new ArrayList<>();
                for (int i = 0; i < pins.size(); i++) {
                    Region left = cut(SetPins.without(ring, pins.subList(0, i + 1)), body.name());
                    cutPins.add(part(pins.get(i).name(), section, withoutSpecks(RegionBoolean.difference(cut, left))));
                    cut = left;
                }
                drawn.add(part(body.name(), section, cut));
                drawn.addAll(cutPins);
            }
        }
        String angle = QuantityFormat.format(Quantity.degrees(degrees));
        List<Section.Dimension> dimensions = dimensions();
        StringBuilder description =
                new StringBuilder("Cross-section at ").append(angle).append(": ");
        drawn.forEach(part -> description
                .append(part.name())
                .append(" in ")
                .append(part.metal())
                .append(", "));
        for (int i = 0; i < dimensions.size(); i++) {
            description.append(i == 0 ? "" : ", ").append(dimensions.get(i).label());
        }
        List<String> notes = notes();
        notes.forEach(note -> description.append("; ").append(note));
        return new Section(
                "Section at " + angle, description.toString(), inner, drawn, stones(), pins(), dimensions, notes);
    }

    private Section.Part part(String name, PartSection section, Region cut) {
        return new Section.Part(name, section.metal().name(), section.metal().picture(), cut.translated(0, -inner));
    }

    /** A part that no seat or pin touches keeps its arcs; another is sliced. */
    private Region cut(Ring from, String part) {
        Body body = from.body(part);
        return from.isTurned(part) ? body.section().region() : HalfPlaneSlice.of(body.mesh(), radians);
    }

    /** Two slices of one solid differ by a hair where they are the same. */
    private static Region withoutSpecks(Region region) {
        return new Region(region.pieces().stream()
                .filter(piece -> piece.moments().area() > SPECK_MM2)
                .toList());
    }

    /** Pins on a part that the cut goes through. */
    private List<Prongs> cutPins(String part) {
        return ring.design().prongs().stream()
                .filter(prongs -> prongs.part().equals(part) && isCut(prongs))
                .toList();
    }

    private boolean isCut(Prongs prongs) {
        return ring.layout(prongs.row()).gaps().stream().anyMatch(gap -> isMet(gap, prongs.diameterMm() / 2 - SAME_MM));
    }

    /** What the drawing alone does not tell: that a row has no stone here, and what is drawn by eye. */
    private List<String> notes() {
        List<String> notes = new ArrayList<>();
        for (StoneRow row : rows()) {
            List<StoneLayout.Place> places = ring.layout(row.name()).places();
            if (places.stream().noneMatch(place -> isMet(place, row.aroundMm() / 2))) {
                places.stream()
                        .map(place -> StrictMath.toDegrees(place.angle()))
                        // Further off nobody looks for stones.
                        .filter(degrees -> away(degrees) < 90_000_000)
                        .min(Comparator.comparingLong(this::away).thenComparingDouble(RingSection::turn))
                        .ifPresent(nearest -> notes.add("no stone of " + row.name() + " here: the nearest stands at "
                                + QuantityFormat.format(Quantity.degrees(turn(nearest)))));
            } else if (row.cut() == StoneCut.PRINCESS || row.cut() == StoneCut.BAGUETTE) {
                notes.add("crowns of " + row.name() + " are drawn by eye: none of this cut is on file");
            }
        }
        return notes;
    }

    /** How far from the cut a place on the ring is, millionths of a degree, so that two on either side are equally far. */
    private long away(double degrees) {
        double turn = turn(degrees - StrictMath.toDegrees(radians));
        return Math.round(Math.min(turn, 360 - turn) * 1e6);
    }

    /** The same place from 0 to before 360 degrees. */
    private static double turn(double degrees) {
        return degrees - 360 * Math.floor(degrees / 360);
    }

    private List<StoneRow> rows() {
        return ring.design().stoneRows().stream()
                .filter(row -> parts.contains(row.part()))
                .toList();
    }

    /** Stones that the cut meets, cut themselves. */
    private List<Section.Silhouette> stones() {
        List<Section.Silhouette> stones = new ArrayList<>();
        for (StoneRow row : rows()) {
            StoneLayout layout = ring.layout(row.name());
            Mesh stone = StoneModel.of(row.cut(), row.widthMm(), row.aroundMm());
            for (StoneLayout.Place place : layout.places()) {
                if (isMet(place, row.aroundMm() / 2)) {
                    Region cut = HalfPlaneSlice.of(RingScene.placed(stone, place), radians);
                    cut.pieces()
                            .forEach(piece -> stones.add(new Section.Silhouette(
                                    row.name(), piece.outer().translated(0, -inner))));
                }
            }
        }
        return stones;
    }

    /** Whether the cut goes through what stands at a place and reaches so far each way round the ring. */
    private boolean isMet(StoneLayout.Place place, double reachMm) {
        double off = StrictMath.sin(place.angle() - radians);
        boolean ahead = StrictMath.cos(place.angle() - radians) > 0;
        return ahead && Math.abs(off) * place.line().girdleRadius() < reachMm;
    }

    /** The pins of the nearest gap of each line, seen behind the cut; those that are cut are drawn as parts, and where the row has ended are none. */
    private List<Section.Silhouette> pins() {
        List<Section.Silhouette> pins = new ArrayList<>();
        for (Prongs prongs : ring.design().prongs()) {
            if (!parts.contains(prongs.part()) || isCut(prongs)) {
                continue;
            }
            StoneLayout layout = ring.layout(prongs.row());
            if (layout.gaps().isEmpty()) {
                continue;
            }
            double radius = prongs.diameterMm() / 2;
            for (int i = 0; i < layout.lines().size(); i++) {
                int gap = nearestGap(layout, i);
                if (!isMet(layout.gaps().get(gap), SEEN_STONES * layout.row().aroundMm())) {
                    continue;
                }
                double across = ring.pinAcross(prongs, gap);
                StoneLayout.Line line = layout.gaps().get(gap).line();
                double girdle = line.girdleRadius() - inner;
                for (double off : prongs.perGap() == 1 ? new double[] {0} : new double[] {-across, across}) {
                    double middle = line.across() + off;
                    Point right = new Point(middle + radius, girdle + prongs.riseMm());
                    Point left = new Point(middle - radius, girdle + prongs.riseMm());
                    Point low = new Point(middle - radius, girdle - ring.pinRoot(prongs));
                    Point lowRight = new Point(middle + radius, low.y());
                    pins.add(new Section.Silhouette(
                            prongs.name(),
                            new Outline(List.of(
                                    new Line(low, lowRight),
                                    new Line(lowRight, right),
                                    Arc.through(right, new Point(middle, right.y() + radius), left),
                                    new Line(left, low)))));
                }
            }
        }
        return pins;
    }

    /** The gap of a line that is nearest to the cut, as its number in the layout. */
    private int nearestGap(StoneLayout layout, int line) {
        int perLine = layout.gaps().size() / layout.lines().size();
        int nearest = line * perLine;
        for (int i = line * perLine; i < (line + 1) * perLine; i++) {
            if (cosine(layout, i) > cosine(layout, nearest)) {
                nearest = i;
            }
        }
        return nearest;
    }

    private double cosine(StoneLayout layout, int gap) {
        return StrictMath.cos(layout.gaps().get(gap).angle() - radians);
    }

    private List<Section.Dimension> dimensions() {
        List<Section.Dimension> dimensions = new ArrayList<>();
        for (Band band : ring.design().bands()) {
            Outline profile = ring.outline(band, radians);
            Bounds box = profile.bounds();
            dimensions.add(across("width", box.minX(), box.maxX(), 0));
            dimensions.add(out("thickness", 0, thickness(band, box), box.maxX()));
            double side = sideHeight(profile, box);
            if (side > 0 && side < box.maxY()) {
                dimensions.add(out("side", 0, side, box.maxX()));
            }
        }
        for (Groove groove : ring.design().grooves()) {
            if (!isMet(groove)) {
                continue;
            }
            groove.depthMm().ifPresent(depth -> {
                Band band = ring.design().bands().get(0);
                SurfaceLine.outer(ring.outline(band, radians), groove.acrossMm())
                        .filter(surface -> !groove.inside())
                        .ifPresent(surface -> {
                            double floor = surface.height() - depth;
                            double left = groove.acrossMm() - groove.widthMm() / 2;
                            dimensions.add(across(groove.name(), left, left + groove.widthMm(), floor));
                            dimensions.add(
                                    out("under " + groove.name(), 0, floor, groove.acrossMm() + groove.widthMm() / 2));
                        });
            });
        }
        for (StoneRow row : rows()) {
            ring.layout(row.name()).places().stream()
                    .filter(place -> Math.abs(StrictMath.sin(place.angle() - radians)) < 1e-6
                            && isMet(place, row.aroundMm() / 2))
                    .findFirst()
                    .ifPresent(place -> {
                        StoneLayout.Line line = place.line();
                        double girdle = line.girdleRadius() - inner;
                        double half = row.widthMm() / 2;
                        dimensions.add(across("stone", line.across() - half, line.across() + half, girdle));
                        dimensions.add(out("girdle line", 0, girdle, line.across() + half));
                    });
        }
        return dimensions;
    }

    /** How high the band is where it is cut, without seats and pins: a groove may have taken its crest. */
    private double thickness(Band band, Bounds profile) {
        double high = ring.sections().stream()
                .filter(part -> part.band().equals(band))
                .mapToDouble(part -> ring.section(part, radians).bounds().maxY() - inner)
                .filter(Double::isFinite)
                .max()
                .orElse(profile.maxY());
        // Facets tell the same height a little lower.
        return Math.abs(high - profile.maxY()) < SAME_MM ? profile.maxY() : high;
    }

    /** Whether a groove passes through the cut. */
    private boolean isMet(Groove groove) {
        double off = radians * (180 / StrictMath.PI) - groove.around().centredDegrees();
        double turn = turn(off);
        return Math.min(turn, 360 - turn) <= groove.around().degrees() / 2;
    }

    /** How high the wall at the fingertip's side stands, if it is straight. */
    private static double sideHeight(Outline outline, Bounds box) {
        return outline.curves().stream()
                .filter(curve -> curve instanceof Line
                        && Math.abs(curve.start().x() - box.maxX()) < 1e-9
                        && Math.abs(curve.end().x() - box.maxX()) < 1e-9)
                .mapToDouble(curve -> Math.max(curve.start().y(), curve.end().y()))
                .max()
                .orElse(0);
    }

    private static Section.Dimension across(String name, double from, double to, double level) {
        return new Section.Dimension(
                Section.Direction.ACROSS, new Point(from, level), new Point(to, level), label(name, to - from));
    }

    private static Section.Dimension out(String name, double from, double to, double across) {
        return new Section.Dimension(
                Section.Direction.OUT, new Point(across, from), new Point(across, to), label(name, to - from));
    }

    private static String label(String name, double mm) {
        return name + " " + QuantityFormat.format(Quantity.millimetres(mm));
    }
}
