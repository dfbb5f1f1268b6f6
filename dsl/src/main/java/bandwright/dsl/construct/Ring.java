// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.geometry.plane.Curve;
import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.Region;
import bandwright.dsl.model.Band;
import bandwright.dsl.model.Design;
import bandwright.dsl.model.Fault;
import bandwright.dsl.model.Prongs;
import bandwright.dsl.model.Seats;
import bandwright.dsl.model.StoneRow;

/**
 * A design as bodies and places. Each thing is worked out when it is first asked for and kept; what cannot be made throws the
 * {@link Fault} that says why. Serves one thread at a time.
 */
public final class Ring {
    private final Design design;
    private final Workshop workshop;
    private final Surfaces surfaces;
    private final Map<String, StoneLayout> layouts = new LinkedHashMap<>();
    private final Map<String, Feature> seatFeatures = new LinkedHashMap<>();
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

    public Collection<PartSection> sections() {
        return cutSections().parts();
    }

    private Sections cutSections() {
        if (sections == null) {
            sections = Sections.of(design);
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
    private record Work(
            Workshop workshop, PartSection section, Workshop.Recipe recipe, Map<Curve, Integer> faces, int end) {
        Body body() {
            return new Body(
                    section, workshop.shape(recipe, () -> new BodyMaker(recipe, curve -> face(curve), end).make()));
        }

        private int face(Curve curve) {
            Integer number = faces.get(curve);
            return number == null ? end : number;
        }
    }

    private Work work(PartSection section) {
        List<Feature> cuts = new ArrayList<>();
        List<Feature> additions = new ArrayList<>();
        Set<StoneLayout> rows = new LinkedHashSet<>();
        for (Seats seats : design.seats()) {
            if (cuts(seats, section.name())) {
                cuts.add(seatFeature(seats));
                rows.add(layout(seats.row()));
            }
        }
        for (Prongs prongs : design.prongs()) {
            if (prongs.part().equals(section.name())) {
                additions.add(pinFeature(prongs));
                rows.add(layout(prongs.row()));
            }
        }
        Workshop.Recipe recipe =
                new Workshop.Recipe(section.region(), cuts, additions, Symmetry.folds(List.copyOf(rows)));
        return new Work(workshop, section, recipe, faces(section), surfaces.number("", "end"));
    }

    /** A collar or a piece is cut with the part that it came from. */
    private boolean cuts(Seats seats, String part) {
        return seats.from().contains(part)
                || seats.from().stream()
                        .anyMatch(named -> cutSections().offcuts(named).contains(part));
    }

    /** A number for what each curve of a section sweeps. */
    private Map<Curve, Integer> faces(PartSection section) {
        Map<Curve, Integer> numbers = new LinkedHashMap<>();
        for (Region.Piece piece : section.region().pieces()) {
            List<Outline> outlines = new ArrayList<>(List.of(piece.outer()));
            outlines.addAll(piece.holes());
            for (Outline outline : outlines) {
                for (Curve curve : outline.curves()) {
                    numbers.put(curve, surfaces.number(section.name(), "face " + (numbers.size() + 1)));
                }
            }
        }
        return numbers;
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
        return new RowPlacing(row, section(row.part())).layout();
    }

    private Feature seatFeature(Seats seats) {
        Feature known = seatFeatures.get(seats.name());
        if (known == null) {
            StoneLayout layout = layout(seats.row());
            for (String part : seats.from()) {
                refuseMiss(seats, layout, part);
            }
            Band band = section(layout.row().part()).band();
            double inner = band.finger().innerRadiusMm();
            double outer = inner + band.stations().get(0).section().heightMm();
            known = SeatShape.of(seats, layout, inner, outer, surfaces);
            seatFeatures.put(seats.name(), known);
        }
        return known;
    }

    /** Seats that find no metal of a part they are cut from are a slip in the text. */
    private void refuseMiss(Seats seats, StoneLayout layout, String part) {
        List<String> pieces = new ArrayList<>(List.of(part));
        pieces.addAll(cutSections().offcuts(part));
        for (String piece : pieces) {
            Bounds metal = section(piece).region().bounds();
            for (StoneLayout.Line line : layout.lines()) {
                double reach = layout.row().widthMm() / 2 + seats.clearanceMm();
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
            for (StoneLayout.Line line : layout.lines()) {
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
        double size = layout(prongs.row()).row().aroundMm();
        return design.seats().stream()
                .filter(seats -> seats.row().equals(prongs.row()))
                .findFirst()
                .map(seats -> seats.bearingMm().orElse(SeatShape.pavilionDepth(size - seats.holeMm())))
                .orElse(SeatShape.pavilionDepth(size));
    }

    /**
     * Places everything without making bodies: sections, stones, seats, pins.
     *
     * @throws Fault if something cannot be made
     */
    public void check() {
        cutSections();
        design.stoneRows().forEach(row -> layout(row.name()));
        design.seats().forEach(this::seatFeature);
        design.prongs().forEach(this::pinFeature);
    }

    /** How far the pins begin below the girdle, mm. */
    public double pinRoot(Prongs prongs) {
        return rootMm(prongs);
    }

    /** Whether a part is a body of revolution: no seat is cut from it and no pin added. */
    public boolean isTurned(String part) {
        return design.seats().stream().noneMatch(seats -> cuts(seats, part))
                && design.prongs().stream().noneMatch(prongs -> prongs.part().equals(part));
    }

    /** Offset of the pins from their row's line, mm. */
    public double pinAcross(Prongs prongs) {
        return PinShape.across(prongs, layout(prongs.row()));
    }
}
