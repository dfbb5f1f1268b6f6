// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.model.Band;
import bandwright.dsl.model.Design;
import bandwright.dsl.model.Fault;
import bandwright.dsl.model.Prongs;
import bandwright.dsl.model.Seats;
import bandwright.dsl.model.StoneRow;

/** What holds the stones of a ring: seats, channels and pins, as shapes; each is worked out when it is first asked for. */
final class Settings {
    private final Ring ring;
    private final Design design;
    private final Workshop workshop;
    private final Surfaces surfaces;
    private final Map<String, List<Feature>> seatFeatures = new LinkedHashMap<>();
    private final Map<String, ChannelCut> channels = new LinkedHashMap<>();
    private final Map<String, Feature> pinFeatures = new LinkedHashMap<>();

    Settings(Ring ring, Design design, Workshop workshop) {
        this.ring = ring;
        this.design = design;
        this.workshop = workshop;
        this.surfaces = workshop.surfaces();
    }

    /** Throws the fault of seats or a channel that cannot be cut. */
    void check(Seats seats) {
        seatFeatures(seats);
        if (seats.channel().isPresent()) {
            refuseMissing(seats);
        }
    }

    /** A part less the channels cut from it; they come after the stones, which stand on what was there before. */
    PartSection channelled(PartSection whole) {
        PartSection part = whole;
        for (Seats seats : design.seats()) {
            if (seats.channel().isPresent() && cuts(seats, whole.name())) {
                part = channel(seats).from(part, workshop);
            }
        }
        return part;
    }

    /** A collar or a piece is cut with the part that it came from. */
    boolean cuts(Seats seats, String part) {
        return seats.from().contains(part)
                || seats.from().stream()
                        .anyMatch(named -> ring.cutSections().offcuts(named).contains(part));
    }

    List<Feature> seatFeatures(Seats seats) {
        List<Feature> known = seatFeatures.get(seats.name());
        if (known == null) {
            StoneLayout layout = ring.layout(seats.row());
            for (String part : seats.from()) {
                refuseMiss(seats, layout, part);
            }
            Band band = ring.section(layout.row().part()).band();
            double inner = band.finger().innerRadiusMm();
            known = SeatShape.of(seats, layout, inner, outermost(band), surfaces);
            seatFeatures.put(seats.name(), known);
        }
        return known;
    }

    /** A part, its collars and its pieces, as far as they are there. */
    private static List<PartSection> pieces(Sections sections, String part) {
        return sections.piecesOf(part).stream()
                .map(sections::find)
                .filter(Objects::nonNull)
                .toList();
    }

    /** The channel that takes the place of seats. */
    private ChannelCut channel(Seats seats) {
        ChannelCut known = channels.get(seats.name());
        if (known == null) {
            StoneLayout layout = ring.layout(seats.row());
            PartSection part = ring.section(layout.row().part());
            List<PartSection> metal = seats.from().stream()
                    .flatMap(name -> pieces(ring.cutSections(), name).stream())
                    .distinct()
                    .toList();
            ChannelMetal all = new ChannelMetal(
                    metal,
                    angle -> ring.outline(part.band(), angle),
                    part.band().finger().innerRadiusMm(),
                    outermost(part.band()));
            known = new ChannelCut(
                    seats,
                    layout,
                    new RowPlacing(layout.row(), part, ring.bounds(part.name())).lines(layout),
                    all,
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
        pieces.addAll(ring.cutSections().offcuts(part));
        for (String piece : pieces) {
            Bounds metal = ring.bounds(piece);
            double reach = layout.row().widthMm() / 2 + seats.clearanceMm();
            for (StoneLayout.Place place : layout.places()) {
                StoneLayout.Line line = place.line();
                if (line.across() + reach > metal.minX() && line.across() - reach < metal.maxX()) {
                    return;
                }
            }
        }
        throw misses(seats, part);
    }

    /** A channel that takes nothing of a part it is cut from is a slip in the text too. */
    private void refuseMissing(Seats seats) {
        for (String part : seats.from()) {
            boolean takes = seats.holeMm() > 0;
            for (PartSection piece : pieces(ring.cutSections(), part)) {
                takes |= !channel(seats).from(piece, workshop).equals(piece);
            }
            if (!takes) {
                throw misses(seats, part);
            }
        }
    }

    private static Fault misses(Seats seats, String part) {
        return new Fault(Diagnostic.error("cut-misses-part", seats.place())
                .with(seats.name(), part)
                .build());
    }

    Feature pinFeature(Prongs prongs) {
        Feature known = pinFeatures.get(prongs.name());
        if (known == null) {
            StoneLayout layout = ring.layout(prongs.row());
            double root = rootMm(prongs);
            double inner = ring.section(prongs.part()).band().finger().innerRadiusMm();
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
    double rootMm(Prongs prongs) {
        if (prongs.rootMm().isPresent()) {
            return prongs.rootMm().getAsDouble();
        }
        StoneRow row = ring.layout(prongs.row()).row();
        return design.seats().stream()
                .filter(seats -> seats.row().equals(prongs.row()))
                .findFirst()
                .map(seats -> SeatShape.coneMm(seats, row))
                .orElseGet(() -> SeatShape.pavilionMm(row));
    }
}
