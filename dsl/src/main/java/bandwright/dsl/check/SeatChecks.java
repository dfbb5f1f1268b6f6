// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

import bandwright.dsl.construct.PartSection;
import bandwright.dsl.construct.Ring;
import bandwright.dsl.construct.StoneLayout;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.material.StoneCut;
import bandwright.dsl.model.Seats;
import bandwright.dsl.model.StoneRow;
import bandwright.dsl.quantity.Quantity;

/**
 * Seats against their stones, and what they leave as cast. A given bearing must be as deep as the pavilion from the girdle to where it is as wide as the
 * hole, or the stone stands on the hole's edge, too high; without a bearing the cone follows the stone. Between bores {@link BoreWebs} looks; from a bore
 * to the side it is measured at the girdle's level.
 */
final class SeatChecks implements Check {
    /** Skins are measured so far below the girdle: a girdle may lie in the surface itself. */
    private static final double BELOW_MM = 1e-4;

    /** Depths that are shown as the same are the same. */
    private static final double SAME_MM = 5e-4;

    @Override
    public String key() {
        return "seat-depth";
    }

    @Override
    public List<Finding> look(Look look) {
        List<Finding> findings = new ArrayList<>();
        for (Seats seats : look.ring().design().seats()) {
            StoneLayout layout = look.ring().layout(seats.row());
            if (seats.channel().isEmpty() && seats.holeMm() > 0) {
                if (seats.bearingMm().isPresent()) {
                    findings.add(depth(look, seats, layout.row()));
                }
                findings.add(look.on("seat-width", seats.row()).measured(2 * seats.clearanceMm()));
            }
            if (seats.channel().isEmpty() && seats.holeMm() > 0) {
                StoneRow stones = layout.row();
                double smallest = Math.min(stones.widthMm(), stones.aroundMm()) - stones.toleranceMm();
                findings.add(look.on("seat-ledge", seats.row()).measured((smallest - seats.holeMm()) / 2));
            }
            if (seats.holeMm() > 0 && StonePlaces.reachesFinger(look, seats)) {
                findings.add(look.on("hole-deburr", seats.name())
                        .saying(seats.deburrMm() == 0 ? "hole-deburr.none" : "hole-deburr")
                        .measured(seats.deburrMm()));
            }
        }
        List<Seats> cast = look.pattern().design().seats();
        for (Seats seats : cast) {
            if (seats.channel().isEmpty() && seats.holeMm() > 0) {
                skins(look, seats, false, findings);
            }
        }
        // Seats in metal that only the bench makes are not cast, whatever is said of them.
        List<String> names = cast.stream().map(Seats::name).toList();
        for (Seats seats : look.ring().design().seats()) {
            if (!names.contains(seats.name()) && seats.channel().isEmpty() && seats.holeMm() > 0) {
                skins(look, seats, true, findings);
            }
        }
        findings.addAll(BoreWebs.betweenRows(look));
        return findings;
    }

    private Finding depth(Look look, Seats seats, StoneRow row) {
        if (row.cut() != StoneCut.ROUND && row.cut() != StoneCut.OVAL) {
            return Look.open(
                    key(), "whether a straight cone fits the steps of this cut is for the setter to see", seats.row());
        }
        double needed = look.ring().depthForStoneMm(seats);
        double bearing = seats.bearingMm().orElse(needed);
        Limit rule = look.limits().get(key());
        double share = needed > 0 ? bearing / needed : 1;
        boolean same = Math.abs(bearing - needed * rule.value().value()) < SAME_MM;
        double told = same ? Math.max(rule.value().value(), share) : share;
        Quantity measured =
                new Quantity(told, rule.value().dimension(), rule.value().shown());
        return look.on(key(), seats.row())
                .telling(Quantity.millimetres(Math.max(0, needed - bearing)).toString())
                .held(measured, rule.value(), rule.text(), rule.margin(told));
    }

    /**
     * Metal between and beside the bores. As cast both are skins, and beside ends the part that is cast. What
     * the bench cuts is cut when all parts are joined: between the bores stands a web, beside them the wall to the side of the band.
     */
    private static void skins(Look look, Seats seats, boolean bench, List<Finding> findings) {
        Ring ring = bench ? look.ring() : look.pattern();
        StoneLayout layout = ring.layout(seats.row());
        StoneRow row = layout.row();
        double inner = StoneChecks.inner(ring, row);
        findings.addAll(BoreWebs.within(look, seats, ring, bench));
        String beside = bench ? "bore-side" : "bore-skin";
        PartSection part = ring.section(row.part());
        List<PartSection> parts = bench
                ? ring.sections().stream()
                        .filter(each -> each.band().equals(part.band()))
                        .toList()
                : List.of(part);
        if (!parts.stream().allMatch(PartSection::isTurned)) {
            findings.add(Look.open(beside, "beside the bores, the part changes on its way round", row.name()));
            return;
        }
        double joint = bench ? EdgeChecks.filled(look, part.name()) + BELOW_MM : 0;
        double bore = row.widthMm() / 2 + seats.clearanceMm();
        double least = Double.POSITIVE_INFINITY;
        StoneLayout.Place at = layout.places().get(0);
        for (StoneLayout.Place place : layout.even() ? firsts(layout) : layout.places()) {
            StoneLayout.Line line = place.line();
            for (double side : new double[] {1, -1}) {
                OptionalDouble metal = Sections.toTheEnd(
                        Sections.turned(parts),
                        new Point(
                                line.across() - BELOW_MM * line.axisAcross(),
                                line.girdleRadius() - BELOW_MM * line.axisOut()),
                        side * line.axisOut(),
                        -side * line.axisAcross(),
                        joint);
                // A bore that opens the side leaves less than no skin there.
                double skin = metal.orElse(0) - bore;
                if (skin < least) {
                    least = skin;
                    at = place;
                }
            }
        }
        if (Double.isFinite(least)) {
            findings.add(look.on(beside, row.name())
                    .telling("beside")
                    .saying(bench || least > 0 ? beside : "bore-skin.open")
                    .at(RingPlace.of(at, inner))
                    // A bur that comes out at the side or the surface leaves none there.
                    .measured(bench ? Math.max(0, least) : least));
        }
    }

    /** The first stone of each line. */
    static List<StoneLayout.Place> firsts(StoneLayout layout) {
        List<StoneLayout.Place> firsts = new ArrayList<>();
        for (int line = 0; line < layout.lines().size(); line++) {
            firsts.add(layout.places().get(line * layout.perLine()));
        }
        return firsts;
    }
}
