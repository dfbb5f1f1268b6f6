// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.DoubleFunction;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.geometry.operation.HalfPlaneSlice;
import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.geometry.plane.Curve;
import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.Region;
import bandwright.dsl.geometry.solid.MeshMeasures;
import bandwright.dsl.model.Band;
import bandwright.dsl.model.Design;
import bandwright.dsl.model.Fault;
import bandwright.dsl.model.Groove;
import bandwright.dsl.model.Prongs;
import bandwright.dsl.model.Seats;
import bandwright.dsl.model.StoneRow;

/**
 * A design as bodies and places. Each thing is worked out when it is first asked for and kept; what cannot be made throws the
 * {@link Fault} that says why. Serves one thread at a time.
 */
public final class Ring {
    private static final int LOOKS = 48;

    private final Design design;
    private final Workshop workshop;
    private final Surfaces surfaces;
    private final Map<String, StoneLayout> layouts = new LinkedHashMap<>();
    private final Map<String, List<Feature>> seatFeatures = new LinkedHashMap<>();
    private final Map<String, ChannelCut> channels = new LinkedHashMap<>();
    private final Map<String, Feature> pinFeatures = new LinkedHashMap<>();
    private final Map<String, Body> bodies = new LinkedHashMap<>();
    private @Nullable Sections sections;

    Ring(Design design, Workshop workshop) {
        this.design = design;
        this.workshop = workshop;
        this.surfaces = workshop.surfaces();
    }

    public Design design() {
        return design;
    }

    /** What the numbers of faces mean. */
    public Surfaces surfaces() {
        return surfaces;
    }

    public Collection<PartSection> sections() {
        return cutSections().parts();
    }

    private Sections cutSections() {
        if (sections == null) {
            sections = Sections.of(design, workshop);
        }
        return sections;
    }

    /** The cross-section of a part. */
    public PartSection section(String part) {
        PartSection section = cutSections().find(part);
        if (section == null) {
            throw new IllegalArgumentException("No part is called " + part);
        }
        return section;
    }

    /** Bodies of all parts, in the order in which they are made; each is worked out on a core of its own. */
    public List<Body> bodies() {
        List<Work> work = new ArrayList<>();
        for (PartSection section : sections()) {
            if (!bodies.containsKey(section.name())) {
                work.add(work(section));
            }
        }
        work.parallelStream().map(Work::body).toList().forEach(body -> bodies.put(body.name(), body));
        return sections().stream().map(section -> body(section.name())).toList();
    }

    public Body body(String part) {
        Body known = bodies.get(part);
        if (known == null) {
            known = work(section(part)).body();
            bodies.put(part, known);
        }
        return known;
    }

    /** All that is needed to make a part's body, gathered so that making it touches nothing shared but the workshop. */
    private record Work(Workshop workshop, PartSection section, Workshop.Recipe recipe, int end, int seamFace) {
        Body body() {
            return new Body(section, workshop.shape(recipe, this::shape));
        }

        private Body.Shape shape() {
            BodyMaker maker = new BodyMaker(recipe, this::face, end);
            Body.Shape whole = section.carved()
                    .map(solid -> maker.carve(workshop.carved(solid)))
                    .orElseGet(maker::make);
            if (recipe.seam().isEmpty()) {
                return whole;
            }
            return whole.parted(mesh -> Halves.of(mesh, recipe.seam().getAsDouble(), seamFace));
        }

        private int face(Curve curve) {
            Integer number = recipe.faces().get(curve);
            return number == null ? end : number;
        }
    }

    /** A part less the channels cut from it; they come after the stones, which stand on what was there before. */
    private PartSection channelled(PartSection whole) {
        PartSection part = whole;
        for (Seats seats : design.seats()) {
            if (seats.channel().isPresent() && cuts(seats, whole.name())) {
                part = channel(seats).from(part, workshop);
            }
        }
        return part;
    }

    private Work work(PartSection whole) {
        PartSection section = channelled(whole);
        List<Feature> cuts = new ArrayList<>();
        List<Feature> additions = new ArrayList<>();
        Set<StoneLayout> rows = new LinkedHashSet<>();
        for (Seats seats : design.seats()) {
            if (cuts(seats, section.name())) {
                cuts.addAll(seatFeatures(seats));
                rows.add(layout(seats.row()));
            }
        }
        for (Prongs prongs : design.prongs()) {
            if (prongs.part().equals(section.name())) {
                additions.add(pinFeature(prongs));
                rows.add(layout(prongs.row()));
            }
        }
        OptionalDouble seam = seam(section.name());
        Workshop.Recipe recipe = new Workshop.Recipe(
                section.region(),
                section.carved(),
                Faces.of(section, surfaces),
                cuts,
                additions,
                Symmetry.folds(List.copyOf(rows)),
                seam);
        int seamFace = seam.isPresent() ? surfaces.number(section.name(), "seam") : 0;
        return new Work(workshop, section, recipe, surfaces.number("", "end"), seamFace);
    }

    /** Where a kept ring is parted into halves, radians. */
    private OptionalDouble seam(String part) {
        return design.grooves().stream()
                .filter(groove -> groove.letIn().orElse(null) instanceof Groove.LetInHalves
                        && groove.keep().stream().anyMatch(keep -> keep.part().equals(part)))
                .mapToDouble(groove -> ((Groove.LetInHalves) groove.letIn().orElseThrow()).degrees())
                .map(degrees -> degrees * (StrictMath.PI / 180))
                .findFirst();
    }

    /** A collar or a piece is cut with the part that it came from. */
    private boolean cuts(Seats seats, String part) {
        return seats.from().contains(part)
                || seats.from().stream()
                        .anyMatch(named -> cutSections().offcuts(named).contains(part));
    }

    /** The cross-section of a band at an angle in radians, before anything is cut; y from the finger. */
    public Outline outline(Band band, double radians) {
        return cutSections().outline(band, radians);
    }

    /** Where a part lies, pins left out: x along the finger, y away from its axis, mm. */
    public Bounds bounds(String part) {
        return bounds(section(part));
    }

    /**
     * The largest width and the largest height of parts' common section, pins left out, mm: of what changes on its way round, where it is
     * widest and where it is highest. Such parts are looked at in {@value #LOOKS} places and at the stations of their bands.
     */
    public Extent extent(List<String> names) {
        List<PartSection> looked = names.stream().map(this::section).toList();
        TreeSet<Double> angles = new TreeSet<>();
        if (!looked.stream().allMatch(PartSection::isTurned)) {
            for (int i = 0; i < LOOKS; i++) {
                angles.add(i * 2 * StrictMath.PI / LOOKS);
            }
            looked.forEach(part ->
                    part.band().stations().forEach(station -> angles.add(station.degrees() * (StrictMath.PI / 180))));
        } else {
            angles.add(0.0);
        }
        double width = 0;
        double height = 0;
        for (double angle : angles) {
            Bounds box = Bounds.NONE;
            for (PartSection part : looked) {
                box = box.with(section(part, angle).bounds());
            }
            width = Math.max(width, box.width());
            height = Math.max(height, box.height());
        }
        return new Extent(width, height);
    }

    private Region section(PartSection part, double angle) {
        if (part.carved().isEmpty()) {
            return part.region();
        }
        Solid solid = part.carved().get();
        return solid instanceof Solid.Lofted
                ? Region.of(outline(part.band(), angle)
                        .translated(0, part.band().finger().innerRadiusMm()))
                : HalfPlaneSlice.of(workshop.carved(solid).mesh(), angle);
    }

    /** Width along the finger and height away from it, mm. */
    public record Extent(double widthMm, double heightMm) {}

    private Bounds bounds(PartSection part) {
        return part.carved()
                .map(solid -> workshop.carved(solid).bounds())
                .orElseGet(() -> part.region().bounds());
    }

    public StoneLayout layout(String row) {
        StoneLayout known = layouts.get(row);
        if (known == null) {
            known = lay(find(design.stoneRows(), row));
            layouts.put(row, known);
        }
        return known;
    }

    private static StoneRow find(List<StoneRow> rows, String name) {
        return rows.stream()
                .filter(row -> row.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("No row is called " + name));
    }

    private StoneLayout lay(StoneRow row) {
        return new RowPlacing(row, section(row.part()), bounds(row.part())).layout();
    }

    private List<Feature> seatFeatures(Seats seats) {
        List<Feature> known = seatFeatures.get(seats.name());
        if (known == null) {
            StoneLayout layout = layout(seats.row());
            for (String part : seats.from()) {
                refuseMiss(seats, layout, part);
            }
            Band band = section(layout.row().part()).band();
            double inner = band.finger().innerRadiusMm();
            known = SeatShape.of(seats, layout, inner, outermost(band), surfaces);
            seatFeatures.put(seats.name(), known);
        }
        return known;
    }

    /** The channel that takes the place of seats. */
    private ChannelCut channel(Seats seats) {
        ChannelCut known = channels.get(seats.name());
        if (known == null) {
            StoneLayout layout = layout(seats.row());
            PartSection part = section(layout.row().part());
            RowPlacing placing = new RowPlacing(layout.row(), part, bounds(part));
            List<DoubleFunction<StoneLayout.Place>> lines = new ArrayList<>();
            for (int i = 0; i < layout.lines().size(); i++) {
                StoneLayout.Line line = layout.lines().get(i);
                double across = layout.row().acrossMm().get(i);
                lines.add(
                        layout.even()
                                ? angle -> new StoneLayout.Place(line, angle)
                                : angle -> placing.place(across, angle));
            }
            List<PartSection> metal = seats.from().stream()
                    .flatMap(name -> cutSections().piecesOf(name).stream())
                    .distinct()
                    .map(cutSections()::find)
                    .filter(Objects::nonNull)
                    .toList();
            Band band = part.band();
            known = new ChannelCut(
                    seats,
                    layout,
                    lines,
                    new ChannelMetal(
                            metal, angle -> outline(band, angle), band.finger().innerRadiusMm(), outermost(band)),
                    surfaces);
            channels.put(seats.name(), known);
        }
        return known;
    }

    private static double outermost(Band band) {
        return band.finger().innerRadiusMm()
                + band.stations().stream()
                        .mapToDouble(station -> station.section().heightMm())
                        .max()
                        .orElse(0);
    }

    /** Seats that find no metal of a part they are cut from are a slip in the text. */
    private void refuseMiss(Seats seats, StoneLayout layout, String part) {
        List<String> pieces = new ArrayList<>(List.of(part));
        pieces.addAll(cutSections().offcuts(part));
        for (String piece : pieces) {
            Bounds metal = bounds(piece);
            double reach = layout.row().widthMm() / 2 + seats.clearanceMm();
            for (StoneLayout.Place place : layout.places()) {
                StoneLayout.Line line = place.line();
                if (line.across() + reach > metal.minX() && line.across() - reach < metal.maxX()) {
                    return;
                }
            }
        }
        throw new Fault(Diagnostic.error("cut-misses-part", seats.place())
                .with(seats.name(), part)
                .build());
    }

    private Feature pinFeature(Prongs prongs) {
        Feature known = pinFeatures.get(prongs.name());
        if (known == null) {
            StoneLayout layout = layout(prongs.row());
            double root = rootMm(prongs);
            double inner = section(prongs.part()).band().finger().innerRadiusMm();
            for (StoneLayout.Place stone : layout.places()) {
                StoneLayout.Line line = stone.line();
                if (line.girdleRadius() - root * line.axisOut() < inner) {
                    throw new Fault(Diagnostic.error("root-too-deep", prongs.place())
                            .with(prongs.name(), Lengths.text(root), Lengths.text(line.girdleRadius() - inner))
                            .build());
                }
            }
            known = PinShape.of(prongs, layout, root, surfaces);
            pinFeatures.put(prongs.name(), known);
        }
        return known;
    }

    /** Without a root of their own, pins go down to the seat's cone; without seats, by the height of a stone's pavilion. */
    private double rootMm(Prongs prongs) {
        if (prongs.rootMm().isPresent()) {
            return prongs.rootMm().getAsDouble();
        }
        StoneRow row = layout(prongs.row()).row();
        return design.seats().stream()
                .filter(seats -> seats.row().equals(prongs.row()))
                .findFirst()
                .map(seats -> SeatShape.coneMm(seats, row))
                .orElseGet(() -> SeatShape.pavilionMm(row));
    }

    /**
     * Places everything without making bodies: sections, stones, seats, pins.
     *
     * @throws Fault if something cannot be made
     */
    public void check() {
        cutSections();
        design.stoneRows().forEach(row -> layout(row.name()));
        design.seats().forEach(this::seatFeatures);
        sections().forEach(this::channelled);
        design.prongs().forEach(this::pinFeature);
    }

    /** How far the pins begin below the girdle, mm. */
    public double pinRoot(Prongs prongs) {
        return rootMm(prongs);
    }

    /** Whether a part is a body of revolution: no seat is cut from it, no pin added, and all it is made of goes round. */
    public boolean isTurned(String part) {
        return section(part).isTurned()
                && design.seats().stream().noneMatch(seats -> cuts(seats, part))
                && design.prongs().stream().noneMatch(prongs -> prongs.part().equals(part));
    }

    /** How many separate bodies a part is meant to be, before seats and pins. */
    public int pieces(String part) {
        PartSection section = section(part);
        OptionalDouble seam = seam(part);
        if (section.isTurned()) {
            return section.region().pieces().size() * (seam.isPresent() ? 2 : 1);
        }
        Carved carved = workshop.carved(section.carved().orElseThrow());
        return seam.isPresent()
                ? MeshMeasures.shells(Halves.of(carved.mesh(), seam.getAsDouble(), 0))
                : carved.shells().size();
    }

    /** Offset of the pins of a gap from their row's line, mm; gaps are counted as in the row's layout. */
    public double pinAcross(Prongs prongs, int gap) {
        return PinShape.across(prongs, layout(prongs.row()), gap);
    }
}
