// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.ArrayList;
import java.util.List;

import bandwright.dsl.construct.PartSection;
import bandwright.dsl.construct.StoneLayout;
import bandwright.dsl.geometry.plane.Region;
import bandwright.dsl.material.StoneCut;
import bandwright.dsl.model.Seats;
import bandwright.dsl.model.StoneRow;
import bandwright.dsl.quantity.Quantity;

/**
 * What a setter is to press over the stones of a channel: how far the tables lie under the surface, how high the metal stands over the girdles and how thick it is beside
 * the slot. Walls that are high and thick are not moved by a punch, and stones far down are neither seen nor reached.
 */
final class ChannelLips {
    private final Look look;
    private final Seats seats;
    private final StoneLayout layout;
    private final StoneRow row;
    private final double inner;

    ChannelLips(Look look, Seats seats, StoneLayout layout) {
        this.look = look;
        this.seats = seats;
        this.layout = layout;
        this.row = layout.row();
        this.inner = StoneChecks.inner(look.ring(), row);
    }

    List<Finding> all() {
        List<Finding> findings = new ArrayList<>();
        findings.add(table());
        List<PartSection> parts = look.ring().sections().stream()
                .filter(part ->
                        part.band().equals(look.ring().section(row.part()).band()))
                .toList();
        if (parts.stream().allMatch(PartSection::isTurned)) {
            findings.add(height(Sections.turned(parts)));
            findings.add(thickness(parts));
        } else {
            String changes = CheckTexts.text("channel.changes");
            findings.add(Look.open("channel-lip-height", changes, row.name()));
            findings.add(Look.open("channel-lip-thickness", changes, row.name()));
        }
        return findings;
    }

    private RingPlace first() {
        return RingPlace.of(layout.places().get(0), inner);
    }

    private Finding table() {
        if (row.cut() != StoneCut.ROUND && row.cut() != StoneCut.OVAL) {
            return Look.open("channel-table", CheckTexts.text("crown.unknown"), row.name());
        }
        double above = EdgeChecks.aboveGirdleLine(row);
        return look.on("channel-table", row.name())
                .telling(Quantity.millimetres(above).toString())
                .telling(Quantity.millimetres(row.sinkMm()).toString())
                .at(first())
                .measured(row.sinkMm() - above);
    }

    private double slot() {
        return seats.channel().orElseThrow().widthMm() / 2;
    }

    /** Over the girdles, at the edge of the slot where the metal stands highest. */
    private Finding height(List<Region> metal) {
        double girdle = row.girdleShare() * row.size().widthMm();
        double highest = Double.NEGATIVE_INFINITY;
        for (StoneLayout.Place place : SeatChecks.firsts(layout)) {
            Heights seen = Heights.ofSeat(metal, place.line());
            for (double edge : new double[] {slot(), -slot()}) {
                highest =
                        Math.max(highest, seen.whole(edge).map(Heights.Span::to).orElse(highest) - girdle);
            }
        }
        return look.on("channel-lip-height", row.name()).at(first()).measured(Math.max(0, highest));
    }

    /** Beside the slot in the girdle's plane, on the thicker side. */
    private Finding thickness(List<PartSection> parts) {
        double thickest = 0;
        for (StoneLayout.Place place : SeatChecks.firsts(layout)) {
            for (double end : ChannelRules.toTheSides(look, seats, place, parts)) {
                thickest = Math.max(thickest, end - slot());
            }
        }
        return look.on("channel-lip-thickness", row.name()).at(first()).measured(thickest);
    }
}
