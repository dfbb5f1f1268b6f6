// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import bandwright.dsl.construct.PartSection;
import bandwright.dsl.construct.StoneLayout;
import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.geometry.plane.Region;
import bandwright.dsl.model.Seats;
import bandwright.dsl.model.StoneRow;

/**
 * Whether stones have their places in the metal: no stone stands in a part that nothing is cut from for it. Stones are seen in the plane of their axis and the
 * finger's. How deep the seats themselves are cut is looked at by {@link SeatChecks}.
 */
final class StonePlaces implements Check {
    /** What a stone merely touches it does not stand in, mm. */
    private static final double TOUCH_MM = 1e-4;

    /** Where stones do not stand alike no more than about so many of a row are looked at, evenly spread. */
    private static final int MOST_LOOKS = 200;

    @Override
    public String key() {
        return "stone-place";
    }

    @Override
    public List<Finding> look(Look look) {
        return look.ring().design().stoneRows().stream()
                .map(row -> place(look, row))
                .toList();
    }

    private Finding place(Look look, StoneRow row) {
        StoneLayout layout = look.ring().layout(row.name());
        List<PartSection> uncut = look.ring().sections().stream()
                .filter(part -> !isCut(look, row, part.name()))
                .toList();
        double deepest = 0;
        StoneLayout.Place at = layout.places().get(0);
        String in = "";
        for (StoneLayout.Place place : looked(layout.places(), layout, uncut)) {
            for (PartSection part : uncut) {
                double depth = depth(place, row, look.ring().section(part, place.angle()));
                if (depth > deepest + TOUCH_MM) {
                    deepest = depth;
                    at = place;
                    in = part.name();
                }
            }
        }
        boolean any = look.ring().design().seats().stream()
                .anyMatch(seats -> seats.row().equals(row.name()));
        String said = any ? key() : "stone-place.uncut";
        return look.on(key(), row.name())
                .telling(in)
                .saying(said)
                .advising(said)
                .at(RingPlace.of(at, StoneChecks.inner(look.ring(), row)))
                .exact()
                .measured(deepest);
    }

    /** Those places of a row, or of its gaps, that tell all. */
    static List<StoneLayout.Place> looked(List<StoneLayout.Place> places, StoneLayout layout, List<PartSection> parts) {
        int perLine = places.size() / layout.lines().size();
        boolean alike = layout.even() && parts.stream().allMatch(PartSection::isTurned);
        int step = alike ? perLine : 1 + places.size() / MOST_LOOKS;
        List<StoneLayout.Place> looked = new ArrayList<>();
        for (int i = 0; i < places.size(); i += step) {
            looked.add(places.get(i));
        }
        return looked;
    }

    /** How far along its axis a stone stands in metal, mm. */
    private static double depth(StoneLayout.Place place, StoneRow row, Region metal) {
        List<Point> corners = new ArrayList<>();
        for (StoneBody.Level level : StoneBody.whole(place, row).levels()) {
            double half = level.scale() * row.widthMm() / 2 - TOUCH_MM;
            if (half > 0) {
                corners.add(new Point(half, level.height()));
                corners.add(0, new Point(-half, level.height()));
            } else {
                corners.add(new Point(0, level.height() + TOUCH_MM));
            }
        }
        return new SeatSection(place.line())
                .common(corners, metal)
                .map(Bounds::height)
                .orElse(0.0);
    }

    private static boolean isCut(Look look, StoneRow row, String part) {
        return look.ring().design().seats().stream()
                .anyMatch(seats -> seats.row().equals(row.name()) && look.ring().cuts(seats, part));
    }

    /** Whether a row's holes go through a part. */
    static boolean isDrilled(Look look, StoneRow row, String part) {
        return look.ring().design().seats().stream()
                .anyMatch(seats -> seats.row().equals(row.name())
                        && seats.holeMm() > 0
                        && look.ring().cuts(seats, part));
    }

    /** Whether holes come out at the finger anywhere: there the innermost part under a stone is among those that they are cut from. */
    static boolean reachesFinger(Look look, Seats seats) {
        StoneLayout layout = look.ring().layout(seats.row());
        List<PartSection> parts = look.ring().sections().stream()
                .filter(part -> part.band()
                        .equals(look.ring().section(layout.row().part()).band()))
                .toList();
        return looked(layout.places(), layout, parts).stream()
                .anyMatch(place -> innermost(look, place, parts)
                        .map(part -> look.ring().cuts(seats, part))
                        .orElse(true));
    }

    private static Optional<String> innermost(Look look, StoneLayout.Place place, List<PartSection> parts) {
        double lowest = Double.POSITIVE_INFINITY;
        Optional<String> innermost = Optional.empty();
        for (PartSection part : parts) {
            Region section = look.ring().section(part, place.angle());
            double from = Heights.ofSeat(List.of(section), place.line())
                    .whole(TOUCH_MM)
                    .map(Heights.Span::from)
                    .orElse(Double.POSITIVE_INFINITY);
            if (from < lowest) {
                lowest = from;
                innermost = Optional.of(part.name());
            }
        }
        return innermost;
    }
}
