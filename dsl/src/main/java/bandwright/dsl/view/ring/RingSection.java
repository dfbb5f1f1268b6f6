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
import bandwright.dsl.geometry.solid.Mesh;
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

    /** Pins no further behind the cut than so many stones are seen there. */
    private static final double SEEN_STONES = 2;

    /** Heights that differ by less are one, mm. */
    private static final double SAME_MM = 0.005;

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
                Region cut = cut(body);
                if (cut.isEmpty()) {
                    // A part that takes only some of the round is not met everywhere.
                    continue;
                }
                drawn.add(new Section.Part(
                        body.name(), section.metal().name(), section.metal().picture(), cut.translated(0, -inner)));
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
        List<Section.Silhouette> stones = stones();
        List<String> notes = notes();
        notes.forEach(note -> description.append("; ").append(note));
        return new Section(
                "Section at " + angle, description.toString(), inner, drawn, stones, pins(), dimensions, notes);
    }

    /** A part that no seat or pin touches keeps its arcs; another is sliced. */
    private Region cut(Body body) {
        return ring.isTurned(body.name()) ? body.section().region() : HalfPlaneSlice.of(body.mesh(), radians);
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
                if (isMet(row, place)) {
                    Region cut = HalfPlaneSlice.of(RingScene.placed(stone, place), radians);
                    cut.pieces()
                            .forEach(piece -> stones.add(new Section.Silhouette(
                                    row.name(), piece.outer().translated(0, -inner))));
                }
            }
        }
        return stones;
    }

    private boolean isMet(StoneRow row, StoneLayout.Place place) {
        double off = StrictMath.sin(place.angle() - radians);
        boolean ahead = StrictMath.cos(place.angle() - radians) > 0;
        return ahead && Math.abs(off) * place.line().girdleRadius() < row.aroundMm() / 2;
    }

    /** The pins of the nearest gap of each line, seen behind the cut; none where the row has ended. */
    private List<Section.Silhouette> pins() {
        List<Section.Silhouette> pins = new ArrayList<>();
        for (Prongs prongs : prongs()) {
            StoneLayout layout = ring.layout(prongs.row());
            double radius = prongs.diameterMm() / 2;
            for (int i = 0; i < layout.lines().size(); i++) {
                int gap = nearestGap(layout, i);
                StoneLayout.Line line = layout.gaps().get(gap).line();
                double away = away(layout.gaps().get(gap));
                if (away < SAME_MM || away > SEEN_STONES * row(prongs).aroundMm()) {
                    // Cut through their middles they are seen in the part, and nothing of them behind it.
                    continue;
                }
                double across = ring.pinAcross(prongs, gap);
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

    /** Those that stand somewhere. */
    private List<Prongs> prongs() {
        return ring.design().prongs().stream()
                .filter(prongs -> parts.contains(prongs.part()))
                .filter(prongs -> !ring.layout(prongs.row()).gaps().isEmpty())
                .toList();
    }

    private StoneRow row(Prongs prongs) {
        return ring.design().stoneRows().stream()
                .filter(row -> row.name().equals(prongs.row()))
                .findFirst()
                .orElseThrow();
    }

    /** The gap of a line that is nearest to the cut, as its number in the layout. */
    private int nearestGap(StoneLayout layout, int line) {
        int perLine = layout.gaps().size() / layout.lines().size();
        int nearest = line * perLine;
        for (int i = line * perLine; i < (line + 1) * perLine; i++) {
            if (cosine(layout.gaps().get(i).angle()) > cosine(layout.gaps().get(nearest).angle())) {
                nearest = i;
            }
        }
        return nearest;
    }

    private double cosine(double angle) {
        return StrictMath.cos(angle - radians);
    }

    /** How far from the cut something is on its way round, mm; more than any ring beyond a quarter of a turn. */
    private double away(StoneLayout.Place place) {
        return cosine(place.angle()) > 0
                ? Math.abs(StrictMath.sin(place.angle() - radians))
                        * place.line().girdleRadius()
                : Double.POSITIVE_INFINITY;
    }

    /** What could be missed in the drawing: stones that the cut passes by, pins that it goes through or that stand behind it. */
    private List<String> notes() {
        List<String> notes = new ArrayList<>();
        for (StoneRow row : rows()) {
            StoneLayout layout = ring.layout(row.name());
            if (layout.places().stream().noneMatch(place -> isMet(row, place))) {
                layout.places().stream()
                        .max(Comparator.comparingDouble((StoneLayout.Place place) -> cosine(place.angle())))
                        // Further off nobody looks for stones.
                        .filter(place -> cosine(place.angle()) > 0)
                        .ifPresent(place -> notes.add("the cut meets no stone of " + row.name() + "; the nearest is at "
                                + degrees(place.angle())));
            }
        }
        for (Prongs prongs : prongs()) {
            StoneLayout layout = ring.layout(prongs.row());
            for (int i = 0; i < layout.lines().size(); i++) {
                StoneLayout.Place gap = layout.gaps().get(nearestGap(layout, i));
                double away = away(gap);
                String note = away < prongs.diameterMm() / 2
                        ? prongs.name() + " are cut through with " + prongs.part()
                        : away <= SEEN_STONES * row(prongs).aroundMm()
                                ? prongs.name() + " stand behind the cut, at " + degrees(gap.angle())
                                : "";
                if (!note.isEmpty() && !notes.contains(note)) {
                    notes.add(note);
                }
            }
        }
        return notes;
    }

    private static String degrees(double radians) {
        double degrees = radians * (180 / StrictMath.PI);
        double turned = degrees - 360 * Math.floor(degrees / 360);
        return QuantityFormat.format(Quantity.degrees(Math.round(turned * 10) / 10.0 % 360));
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
                    .filter(place -> Math.abs(StrictMath.sin(place.angle() - radians)) < 1e-6 && isMet(row, place))
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
        double turn = off - 360 * Math.floor(off / 360);
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
