// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.geometry.operation.Stack;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.material.StoneAngles;
import bandwright.dsl.material.StoneCut;
import bandwright.dsl.model.Fault;
import bandwright.dsl.model.Seats;
import bandwright.dsl.model.StoneRow;

/**
 * The tool that cuts a seat: hole, cone, bore, from the finger outwards along the stone's axis.
 *
 * <p>The hole is drilled, so it is round under every stone. With a {@code bearing} the cone goes straight from the hole to the girdle's outline
 * over that height. Without, it keeps clear of the pavilion ({@link StoneAngles}): under a round stone at the pavilion's angle; under an oval at
 * the angle that follows its longer side; under a rectangular stone as a pocket with all four sides at the pavilion's angle, or steeper where the pavilion is
 * deeper, down to a flat floor as wide as the hole.
 */
final class SeatShape {
    /** How far the tool reaches beyond the metal on both sides, mm. */
    private static final double BEYOND_MM = 1;

    /** Sides of the circle; at 48 the corners leave a 1.5 mm circle by under 2 micrometres. */
    private static final int FACETS = 48;

    /** The floor of a pocket is wider than its hole by this share, so that the two outlines do not touch. */
    private static final double FLOOR_SHARE = 0.02;

    /** Levels nearer than this are one, mm. */
    private static final double SAME_MM = 1e-9;

    private final Seats seats;
    private final StoneRow row;
    private final Surfaces surfaces;
    private final double hole;

    private SeatShape(Seats seats, StoneRow row, Surfaces surfaces) {
        this.seats = seats;
        this.row = row;
        this.surfaces = surfaces;
        this.hole = seats.holeMm() / 2;
    }

    /** One shape for all stones; where a bevel at the finger is asked for, one for each height of girdles above it. */
    static List<Feature> of(Seats seats, StoneLayout layout, double innermost, double outermost, Surfaces surfaces) {
        SeatShape shape = new SeatShape(seats, layout.row(), surfaces);
        if (layout.places().isEmpty() || seats.holeMm() == 0) {
            return List.of();
        }
        double reach = Math.max(layout.row().aroundMm(), layout.row().widthMm()) / 2;
        Map<Long, List<StoneLayout.Place>> byLevel = new LinkedHashMap<>();
        double deepest = 0;
        double highest = 0;
        for (StoneLayout.Place place : layout.places()) {
            StoneLayout.Line line = place.line();
            double upright = Math.max(0.2, line.axisOut());
            deepest = Math.max(deepest, (line.girdleRadius() - innermost) / upright + reach * reach / innermost);
            highest = Math.max(highest, (outermost - line.girdleRadius()) / upright + reach);
            long level = seats.deburrMm() > 0 ? Math.round(line.girdleRadius() / SAME_MM) : 0;
            byLevel.computeIfAbsent(level, key -> new ArrayList<>()).add(place);
        }
        List<Feature> features = new ArrayList<>();
        for (List<StoneLayout.Place> places : byLevel.values()) {
            double level = places.stream()
                            .mapToDouble(place -> place.line().girdleRadius())
                            .min()
                            .orElse(innermost)
                    - innermost;
            features.add(new Feature(
                    shape.form(level, deepest, highest),
                    places.stream().map(SeatShape::axis).toList()));
        }
        return features;
    }

    private static Feature.Axis axis(StoneLayout.Place place) {
        StoneLayout.Line line = place.line();
        return new Feature.Axis(
                place.angle(),
                line.girdleRadius(),
                line.across(),
                line.axisOut(),
                line.axisAcross(),
                place.axisAround());
    }

    /** What an outline of the tool is a circle or a girdle of. */
    private enum Kind {
        HOLE,
        GIRDLE
    }

    /** An outline at a height: a circle of that radius, or the girdle widened by that much. */
    private record Ring(double height, Kind kind, double amount) {}

    private Feature.Form form(double level, double deepest, double highest) {
        if (seats.channel().isPresent()) {
            return drilled(level, deepest);
        }
        double bearing = coneMm(seats, row);
        if ((seats.bearingMm().isPresent() || seats.deburrMm() > 0) && bearing + seats.deburrMm() >= level) {
            throw new Fault(Diagnostic.error("seat-too-deep", seats.place())
                    .with(seats.name(), Lengths.text(bearing + seats.deburrMm()), Lengths.text(level))
                    .build());
        }
        List<Ring> rings = new ArrayList<>();
        List<Integer> faces = new ArrayList<>();
        drill(rings, faces, level, Math.max(deepest, bearing));
        rings.add(new Ring(-bearing, Kind.HOLE, hole));
        double narrowed = narrowedMm();
        if (narrowed > 0) {
            faces.add(face("floor"));
            rings.add(new Ring(-bearing, Kind.GIRDLE, -narrowed));
        }
        faces.add(face("bearing"));
        rings.add(new Ring(0, Kind.GIRDLE, 0));
        int bore = face("bore");
        if (seats.clearanceMm() > 0) {
            faces.add(face("ledge"));
            rings.add(new Ring(0, Kind.GIRDLE, seats.clearanceMm()));
        }
        faces.add(bore);
        rings.add(new Ring(highest + BEYOND_MM, Kind.GIRDLE, seats.clearanceMm()));
        return row.cut() == StoneCut.ROUND ? turned(rings, faces) : stacked(rings, faces);
    }

    /** The hole from below the finger, with its bevel, as far as the next outline. */
    private void drill(List<Ring> rings, List<Integer> faces, double level, double deepest) {
        double bottom = -deepest - BEYOND_MM;
        int holeFace = face("hole");
        if (seats.deburrMm() > 0) {
            rings.add(new Ring(bottom, Kind.HOLE, hole + seats.deburrMm() - level - bottom));
            faces.add(face("bevel"));
            bottom = -level + seats.deburrMm();
        }
        rings.add(new Ring(bottom, Kind.HOLE, hole));
        faces.add(holeFace);
    }

    /** Under a stone in a channel: a hole that ends in the slot. */
    private Feature.Form drilled(double level, double deepest) {
        List<Ring> rings = new ArrayList<>();
        List<Integer> faces = new ArrayList<>();
        drill(rings, faces, level, deepest);
        rings.add(new Ring(0, Kind.HOLE, hole));
        List<Point> points =
                rings.stream().map(ring -> new Point(ring.height, ring.amount)).toList();
        faces.add(face("hole"));
        return new Feature.Turned(points, faces, FACETS);
    }

    private Feature.Form turned(List<Ring> rings, List<Integer> faces) {
        double stone = row.aroundMm() / 2;
        List<Point> points = rings.stream()
                .map(ring -> new Point(ring.height, ring.kind == Kind.HOLE ? ring.amount : stone + ring.amount))
                .toList();
        faces.add(face("bore"));
        return new Feature.Turned(points, faces, FACETS);
    }

    private Feature.Form stacked(List<Ring> rings, List<Integer> faces) {
        SeatOutline outline = new SeatOutline(row, narrowedMm());
        List<Stack.Level> levels = new ArrayList<>();
        for (Ring ring : rings) {
            levels.add(new Stack.Level(
                    ring.height, ring.kind == Kind.HOLE ? outline.circle(ring.amount) : outline.girdle(ring.amount)));
        }
        // A roof high above the metal, for the ends of a stack are to be round.
        faces.add(face("bore"));
        levels.add(new Stack.Level(rings.get(rings.size() - 1).height + BEYOND_MM, outline.circle(hole)));
        faces.add(face("bore"));
        return new Feature.Stacked(levels, faces);
    }

    private int face(String what) {
        return surfaces.number(seats.name(), what);
    }

    /** How much narrower than the girdle the floor of a pocket is, on every side; 0 where there is none. */
    private double narrowedMm() {
        boolean pocket = isRectangular(row.cut()) && seats.bearingMm().isEmpty();
        double floor = hole * (1 + FLOOR_SHARE);
        return pocket ? Math.max(0, row.size().widthMm() / 2 - floor) : 0;
    }

    static boolean isRectangular(StoneCut cut) {
        return cut == StoneCut.PRINCESS || cut == StoneCut.BAGUETTE;
    }

    /** Height of a seat's cone (or pocket) under the girdle, mm. */
    static double coneMm(Seats seats, StoneRow row) {
        return seats.bearingMm().orElse(stoneMm(seats, row));
    }

    /** How high that is to be for the stone, mm: to where all of its pavilion is as narrow as the hole. */
    static double stoneMm(Seats seats, StoneRow row) {
        double shorter = row.size().widthMm() / 2;
        double hole = seats.holeMm() / 2;
        double slope = row.angles().pavilionSlope();
        return switch (row.cut()) {
            case ROUND -> slope * (shorter - hole);
            case OVAL -> slope * shorter * (1 - hole / (row.size().lengthMm() / 2));
            case PRINCESS, BAGUETTE -> Math.max(slope * (shorter - hole), pavilionMm(row));
        };
    }

    /** From the girdle to the culet, mm. */
    static double pavilionMm(StoneRow row) {
        return row.cut() == StoneCut.ROUND || row.cut() == StoneCut.OVAL
                ? row.size().widthMm() / 2 * row.angles().pavilionSlope()
                : row.size().widthMm() * row.angles().pavilionShare();
    }
}
