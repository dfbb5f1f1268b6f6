// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

import bandwright.dsl.construct.PartSection;
import bandwright.dsl.construct.StoneLayout;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.geometry.plane.Region;
import bandwright.dsl.model.Seats;
import bandwright.dsl.model.StoneRow;

/**
 * Channels: how wide against their stones, by rules that differ, whether girdles find room in their notches, and what is left of the wall beside. The wall is measured in the plane of the
 * girdle, through all parts of the band before the channel is cut.
 */
final class ChannelRules implements Check {
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

    private Finding wall(Look look, Seats seats, StoneLayout layout) {
        StoneRow row = layout.row();
        PartSection part = look.ring().section(row.part());
        List<PartSection> parts = look.ring().sections().stream()
                .filter(other -> other.band().equals(part.band()))
                .toList();
        if (!parts.stream().allMatch(PartSection::isTurned)) {
            return Look.open(key(), "the band changes on its way round", row.name());
        }
        List<Region> metal = Sections.turned(parts);
        Seats.Channel channel = seats.channel().orElseThrow();
        double reach = channel.widthMm() / 2 + channel.notchMm();
        double least = Double.POSITIVE_INFINITY;
        StoneLayout.Place at = layout.places().get(0);
        for (StoneLayout.Place place : SeatChecks.firsts(layout)) {
            StoneLayout.Line line = place.line();
            for (double side : new double[] {1, -1}) {
                OptionalDouble end = Sections.toTheEnd(
                        metal,
                        new Point(line.across(), line.girdleRadius()),
                        side * line.axisOut(),
                        -side * line.axisAcross());
                double wall = end.orElse(0) - reach;
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
