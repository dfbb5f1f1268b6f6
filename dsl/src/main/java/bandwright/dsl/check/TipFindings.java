// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.construct.PartSection;
import bandwright.dsl.construct.StoneLayout;
import bandwright.dsl.geometry.plane.Region;
import bandwright.dsl.material.BrilliantProportions;
import bandwright.dsl.material.StoneAngles;
import bandwright.dsl.material.StoneCut;
import bandwright.dsl.model.Prongs;
import bandwright.dsl.model.StoneRow;
import bandwright.dsl.quantity.Quantity;

/**
 * What is found about the tips of pins: as high as they are cast, as they are to be when they are finished, and the metal between the two. Heights are above
 * the girdle line, mm.
 */
final class TipFindings {
    private final Look look;
    private final Prongs prongs;
    private final StoneLayout layout;
    private final StoneRow row;
    private final double coveredMm;
    private final @Nullable RingPlace at;

    /**
     * @param coveredMm how far a pin covers the girdle of its stones as cast, at the least
     * @param at where that is
     */
    TipFindings(Look look, Prongs prongs, double coveredMm, @Nullable RingPlace at) {
        this.look = look;
        this.prongs = prongs;
        this.layout = look.ring().layout(prongs.row());
        this.row = layout.row();
        this.coveredMm = Math.max(0, coveredMm);
        this.at = at;
    }

    List<Finding> all() {
        List<Finding> findings = new ArrayList<>();
        boolean crownIsKnown = row.cut() == StoneCut.ROUND || row.cut() == StoneCut.OVAL;
        findings.add(crownIsKnown ? height() : unknown("tip-height"));
        if (prongs.setHeightMm().isPresent()) {
            double finished = prongs.setHeightMm().getAsDouble();
            findings.add(reached(finished));
            if (finished <= asCast()) {
                findings.add(crownIsKnown ? metal(finished) : unknown("tip-metal"));
            }
            findings.add(surface(finished).measured(overSurface(finished)));
        } else if (crownIsKnown) {
            // The highest finished tip there may be tells enough where even that lies too low.
            Limit high = look.limits().get("tip-height-most");
            double highest = girdle() + high.value().value() * crown();
            Finding found = surface(highest)
                    .telling(high.value().toString())
                    .saying("tip-surface.most")
                    .measured(overSurface(highest));
            if (found.verdict() != Verdict.PASSED) {
                findings.add(found);
            }
        }
        return findings;
    }

    private Finding unknown(String check) {
        return Look.open(check, CheckTexts.text("crown.unknown"), prongs.name());
    }

    /** The pole of the dome. */
    private double asCast() {
        return prongs.riseMm() + prongs.diameterMm() / 2;
    }

    private double girdle() {
        return row.girdleShare() * row.size().widthMm();
    }

    private double crown() {
        return BrilliantProportions.REFERENCE.crownHeightPercent()
                / 100
                * row.size().widthMm();
    }

    /**
     * Finished tips, by the limit that they are nearer to break. Where their height is not given, pins too short as cast fail all the
     * same, for tips only get lower; of others the finished tip is not known.
     */
    private Finding height() {
        double share = (prongs.setHeightMm().orElse(asCast()) - girdle()) / crown();
        Limit low = look.limits().get("tip-height-least");
        Limit high = look.limits().get("tip-height-most");
        boolean nearerLow = low.margin(share) < high.margin(share);
        if (prongs.setHeightMm().isEmpty()) {
            Finding least =
                    look.on("tip-height", low, prongs.name()).at(at).exact().measured(share);
            return least.failed()
                    ? least
                    : Look.open(
                            "tip-height",
                            CheckTexts.text(
                                    "tip-height.unknown",
                                    Objects.requireNonNull(least.measured()),
                                    low.value(),
                                    high.value()),
                            prongs.name());
        }
        return look.on("tip-height", nearerLow ? low : high, prongs.name())
                .at(at)
                .exact()
                .measured(share);
    }

    /** Whatever a setter does to a tip, it gets no higher. */
    private Finding reached(double finished) {
        return look.on("tip-reached", prongs.name())
                .telling(mm(asCast()))
                .telling(mm(finished))
                .at(at)
                .measured(asCast() - finished);
    }

    /**
     * Metal of a pin above its finished tip against what is to lie over its two stones, both told as a height of the pin. Over each stone a strip as wide as the
     * pin is wanted, from where the pin covers it as cast to as far as {@code pin-reach} says, between crown and finished tip.
     */
    private Finding metal(double finished) {
        double radius = prongs.diameterMm() / 2;
        double section = StrictMath.PI * radius * radius;
        double crownWidth = (100 - BrilliantProportions.REFERENCE.tablePercent())
                / 200
                * row.size().widthMm();
        Quantity reach = look.limits().get("pin-reach").value();
        double slope = StoneAngles.of(row.cut()).crownSlope();
        double over = finished - girdle();
        double to = Math.min(reach.value() * crownWidth, over / slope);
        double strip = to <= coveredMm ? 0 : over * (to - coveredMm) - slope / 2 * (to * to - coveredMm * coveredMm);
        double wanted = 2 * prongs.diameterMm() * strip;
        return look.on("tip-metal", prongs.name())
                .telling(mm(above(finished) / section))
                .telling(mm(wanted / section))
                .telling(reach.toString())
                .at(at)
                .measured((above(finished) - wanted) / section);
    }

    /** Volume of a pin above a height that it reaches, mm^3: of its shank and half-sphere, or of a cap of that. */
    private double above(double height) {
        double radius = prongs.diameterMm() / 2;
        double shank = prongs.riseMm() - height;
        double cap = Math.min(radius, radius + shank);
        return StrictMath.PI * (radius * radius * Math.max(0, shank) + cap * cap * (3 * radius - cap) / 3);
    }

    private Look.Builder surface(double finished) {
        return look.on("tip-surface", prongs.name())
                .telling(mm(Math.max(0, -overSurface(finished))))
                .at(at);
    }

    /** A finished tip over the surface that is highest where the pins of a gap come through it, mm; of a part that is not turned, over that on the row's line. */
    private double overSurface(double finished) {
        PartSection part = look.ring().section(prongs.part());
        List<Region> turned = Sections.turned(look.ring().sections().stream()
                .filter(each -> each.band().equals(part.band()) && each.isTurned())
                .toList());
        double surface = part.isTurned() ? Double.NEGATIVE_INFINITY : row.sinkMm();
        for (int gap = 0; part.isTurned() && gap < layout.gaps().size(); gap++) {
            StoneLayout.Line line = layout.gaps().get(gap).line();
            // Where all stand alike, one gap of each line tells.
            if (layout.even()
                    && gap > 0
                    && line.equals(layout.gaps().get(gap - 1).line())) {
                continue;
            }
            double across = look.ring().pinAcross(prongs, layout.even() ? 0 : gap);
            Heights seen = Heights.ofSeat(turned, line);
            for (double off : prongs.perGap() == 1 ? new double[] {0} : new double[] {-across, across}) {
                surface =
                        Math.max(surface, seen.whole(off).map(Heights.Span::to).orElse(Double.NEGATIVE_INFINITY));
            }
        }
        return finished - (Double.isFinite(surface) ? surface : row.sinkMm());
    }

    private static String mm(double length) {
        return Quantity.millimetres(length).toString();
    }
}
