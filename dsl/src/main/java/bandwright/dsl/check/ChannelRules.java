// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import bandwright.dsl.construct.PartSection;
import bandwright.dsl.construct.StoneLayout;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.geometry.plane.Region;
import bandwright.dsl.geometry.plane.RegionBoolean;
import bandwright.dsl.model.Seats;
import bandwright.dsl.model.StoneRow;

/**
 * Channels: how wide against their stones, by rules that differ, whether girdles find room in their notches, and what is left of the wall beside. The wall is measured in the plane of the
 * girdle, through all parts of the band before the channel is cut, to the side or to what another line or row takes away; {@link ChannelLips} looks at what is pressed over.
 */
final class ChannelRules implements Check {
    /** So far below the girdle line a notch is taken as widest: two girdles may lie in one plane. */
    private static final double BELOW_MM = 1e-3;

    /** So far beyond the metal a cut is open. */
    private static final double BEYOND_MM = 3;

    @Override
    public String key() {
        return "channel-wall";
    }

    @Override
    public List<Finding> look(Look look) {
        List<Finding> findings = new ArrayList<>();
        for (Seats seats : look.ring().design().seats()) {
            if (seats.channel().isPresent()) {
                StoneLayout layout = look.ring().layout(seats.row());
                double share = seats.channel().get().widthMm() / layout.row().widthMm();
                findings.add(look.on("channel-width", look.limits().get("channel-width-most"), seats.row())
                        .exact()
                        .measured(share));
                findings.add(look.on("channel-width", look.limits().get("channel-width-least"), seats.row())
                        .exact()
                        .measured(share));
                findings.add(notch(look, seats.channel().get(), layout));
                findings.add(wall(look, seats, layout));
                findings.addAll(new ChannelLips(look, seats, layout).all());
            }
        }
        return findings;
    }

    /** What the notch is deeper than the girdle of the largest stone reaches into the wall. */
    private static Finding notch(Look look, Seats.Channel channel, StoneLayout layout) {
        StoneRow row = layout.row();
        double reach = (row.widthMm() + row.toleranceMm() - channel.widthMm()) / 2;
        return look.on("channel-notch", row.name())
                .at(RingPlace.of(layout.places().get(0), StoneChecks.inner(look.ring(), row)))
                .exact()
                .measured(channel.notchMm() - reach);
    }

    /** What the other lines of a row and the other rows of its band take away, where they stand. */
    private static List<Region> others(Look look, Seats own, StoneLayout.Place of) {
        List<Region> taken = new ArrayList<>();
        String band = look.ring()
                .section(look.ring().layout(own.row()).row().part())
                .band()
                .name();
        for (Seats seats : look.ring().design().seats()) {
            StoneRow row = look.ring().layout(seats.row()).row();
            boolean beside = seats.equals(own)
                    || StoneArcs.meet(look.ring().layout(own.row()), look.ring().layout(seats.row()));
            if (beside && look.ring().section(row.part()).band().name().equals(band)) {
                for (StoneLayout.Place place : SeatChecks.firsts(look.ring().layout(seats.row()))) {
                    if (!(seats.equals(own) && place.equals(of))) {
                        taken.add(new SeatSection(place.line()).figure(cut(look, seats, row, place.line())));
                    }
                }
            }
        }
        return taken;
    }

    /** The outline of a slot with its notches, or of a bore with its hole, from beyond the surface to its bottom. */
    private static List<Point> cut(Look look, Seats seats, StoneRow row, StoneLayout.Line line) {
        double toFinger = line.girdleRadius() - StoneChecks.inner(look.ring(), row);
        double wide = seats.channel()
                .map(channel -> channel.widthMm() / 2 + channel.notchMm())
                .orElse(row.widthMm() / 2 + seats.clearanceMm());
        double narrow = seats.channel().map(channel -> channel.widthMm() / 2).orElse(seats.holeMm() / 2);
        double foot = seats.channel()
                .map(channel -> channel.notchMm() * row.angles().pavilionSlope())
                .orElse(look.ring().coneMm(seats));
        double bottom = Math.max(
                foot + BELOW_MM,
                seats.channel().map(channel -> toFinger - channel.floorMm()).orElse(toFinger + BEYOND_MM));
        List<Point> half = List.of(
                new Point(narrow, -bottom),
                new Point(narrow, -foot - BELOW_MM),
                new Point(wide, -BELOW_MM),
                new Point(wide, BEYOND_MM));
        List<Point> whole = new ArrayList<>(half);
        for (int i = half.size() - 1; i >= 0; i--) {
            whole.add(new Point(-half.get(i).x(), half.get(i).y()));
        }
        return whole;
    }

    /** Metal of turned parts from a line of a channel to its end, on either side in the girdle's plane, less what all other lines and rows take, mm. */
    static List<Double> toTheSides(Look look, Seats seats, StoneLayout.Place place, List<PartSection> parts) {
        StoneLayout.Line line = place.line();
        List<Region> metal = less(Sections.turned(parts), others(look, seats, place));
        return Stream.of(1.0, -1.0)
                .map(side -> Sections.toTheEnd(
                                metal,
                                new Point(line.across(), line.girdleRadius()),
                                side * line.axisOut(),
                                -side * line.axisAcross())
                        .orElse(0))
                .toList();
    }

    private static List<Region> less(List<Region> metal, List<Region> taken) {
        return metal.stream()
                .map(region -> taken.stream().reduce(region, RegionBoolean::difference))
                .toList();
    }

    private Finding wall(Look look, Seats seats, StoneLayout layout) {
        StoneRow row = layout.row();
        PartSection part = look.ring().section(row.part());
        List<PartSection> parts = look.ring().sections().stream()
                .filter(other -> other.band().equals(part.band()))
                .toList();
        if (!parts.stream().allMatch(PartSection::isTurned)) {
            return Look.open(key(), CheckTexts.text("channel.changes"), row.name());
        }
        Seats.Channel channel = seats.channel().orElseThrow();
        double reach = channel.widthMm() / 2 + channel.notchMm();
        double least = Double.POSITIVE_INFINITY;
        StoneLayout.Place at = layout.places().get(0);
        for (StoneLayout.Place place : SeatChecks.firsts(layout)) {
            for (double end : toTheSides(look, seats, place, parts)) {
                double wall = end - reach;
                if (wall < least - 1e-9) {
                    least = wall;
                    at = place;
                }
            }
        }
        return look.on(key(), row.name())
                .at(RingPlace.of(at, StoneChecks.inner(look.ring(), row)))
                .measured(least);
    }
}
