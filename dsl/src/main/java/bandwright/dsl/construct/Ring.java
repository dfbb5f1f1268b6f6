// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.geometry.operation.HalfPlaneSlice;
import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.geometry.plane.Curve;
import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.Region;
import bandwright.dsl.geometry.solid.Mesh;
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

    /** In how many directions to either side of one a changing band is looked at for how far it reaches. */
    private static final int REACH_LOOKS = 180;

    private final Design design;
    private final Workshop workshop;
    private final Surfaces surfaces;
    private final Settings settings;
    private final Map<String, StoneLayout> layouts = new LinkedHashMap<>();
    private final Map<String, Body> bodies = new LinkedHashMap<>();
    private @Nullable Sections sections;

    Ring(Design design, Workshop workshop) {
        this.design = design;
        this.workshop = workshop;
        this.surfaces = workshop.surfaces();
        this.settings = new Settings(this, design, workshop);
    }

    /** Another design, made in the same workshop. */
    public Ring of(Design other) {
        return new Ring(other, workshop);
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

    Sections cutSections() {
        if (sections == null) {
            sections = Sections.of(design, workshop);
        }
        return sections;
    }

    /** The cross-section of a part. */
    public PartSection section(String part) {
        PartSection section = cutSections().find(part);
        if (section == null) {
            List<String> pieces = cutSections().offcuts(part);
            if (pieces.isEmpty()) {
                throw new IllegalArgumentException("No part is called " + part);
            }
            throw new Fault(Diagnostic.error("part-was-parted", null)
                    .with(part, String.join(", ", pieces))
                    .build());
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

    private Work work(PartSection whole) {
        PartSection section = settings.channelled(whole);
        List<Feature> cuts = new ArrayList<>();
        List<Feature> additions = new ArrayList<>();
        Set<StoneLayout> rows = new LinkedHashSet<>();
        for (Seats seats : design.seats()) {
            if (settings.cuts(seats, section.name())) {
                cuts.addAll(settings.seatFeatures(seats));
                rows.add(layout(seats.row()));
            }
        }
        for (Prongs prongs : design.prongs()) {
            if (prongs.part().equals(section.name())) {
                additions.add(settings.pinFeature(prongs));
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

    /** The cross-section of a part at an angle in radians, before seats and pins; y from the finger's axis, mm. */
    public Region section(PartSection part, double angle) {
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

    /** How far a part reaches from the finger's axis towards an angle in radians, seats and pins left out, mm. */
    public double reach(PartSection part, double towards) {
        if (part.carved().isEmpty()) {
            return part.region().bounds().maxY();
        }
        Solid solid = part.carved().get();
        double most = Double.NEGATIVE_INFINITY;
        if (solid instanceof Solid.Lofted) {
            for (int i = -REACH_LOOKS; i <= REACH_LOOKS; i++) {
                double off = i * (StrictMath.PI / 2) / REACH_LOOKS;
                most = Math.max(most, section(part, towards + off).bounds().maxY() * StrictMath.cos(off));
            }
            return most;
        }
        Mesh mesh = workshop.carved(solid).mesh();
        double cosine = StrictMath.cos(towards);
        double sine = StrictMath.sin(towards);
        for (int v = 0; v < mesh.vertexCount(); v++) {
            most = Math.max(most, mesh.x(v) * cosine + mesh.y(v) * sine);
        }
        return most;
    }

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
        PartSection part = section(row.part());
        return workshop.layout(row, part, () -> new RowPlacing(row, part, bounds(part)).layout());
    }

    /**
     * Places everything without making bodies: sections, stones, seats, pins.
     *
     * @throws Fault if something cannot be made
     */
    public void check() {
        cutSections();
        design.stoneRows().forEach(row -> layout(row.name()));
        design.seats().forEach(settings::check);
        design.prongs().forEach(settings::pinFeature);
    }

    /** How far the pins begin below the girdle, mm. */
    public double pinRoot(Prongs prongs) {
        return settings.rootMm(prongs);
    }

    /** Whether seats or a channel are cut from a part, or from the part that it was parted off. */
    public boolean cuts(Seats seats, String part) {
        return settings.cuts(seats, part);
    }

    /** Whether a part is a body of revolution: no seat is cut from it, no pin added, and all it is made of goes round. */
    public boolean isTurned(String part) {
        return section(part).isTurned()
                && design.seats().stream().noneMatch(seats -> settings.cuts(seats, part))
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

    /** How many bodies made of a row's pins alone stand free of their part. */
    public int loose(Prongs prongs) {
        Body body = body(prongs.part());
        return body.pieces() == pieces(prongs.part())
                ? 0
                : MeshMeasures.shellsOf(
                        body.mesh(),
                        surface -> surfaces.face(surface).definition().equals(prongs.name()));
    }

    /** Offset of the pins of a gap from their row's line, mm; gaps are counted as in the row's layout. */
    public double pinAcross(Prongs prongs, int gap) {
        return PinShape.across(prongs, layout(prongs.row()), gap);
    }

    /** From the girdle of a row's stones to where all of their pavilion is as narrow as the hole, mm. */
    public double depthForStoneMm(Seats seats) {
        return SeatShape.stoneMm(seats, layout(seats.row()).row());
    }

    /** Height of the cone, or the pocket, of a row's seats under the girdle, mm. */
    public double coneMm(Seats seats) {
        return SeatShape.coneMm(seats, layout(seats.row()).row());
    }
}
