// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import bandwright.dsl.construct.PartSection;
import bandwright.dsl.construct.StoneLayout;
import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.material.BrilliantProportions;
import bandwright.dsl.material.StoneCut;
import bandwright.dsl.measure.RowMeasures;
import bandwright.dsl.model.Groove;
import bandwright.dsl.model.Seats;
import bandwright.dsl.model.StoneRow;
import bandwright.dsl.quantity.Quantity;

/**
 * Where stones stand in their part: girdles and its edges, culets and the finger, metal behind the row, sink. An edge is where the part ends or has a
 * crease, as the stone sees it that stands square to a slope: where the surface, once below the girdle's plane, falls away from that plane by more than 45 degrees. A slope
 * itself is no edge. Of a part that is not turned it is where the part ends across, of one that is no whole band either where it ends anywhere, which is approximate. Metal behind
 * a row is taken from the girdle to the first void under it or the finger, behind a channel from its floor if it has one.
 */
final class EdgeChecks implements Check {
    private static final double STEP_MM = 0.01;

    /** Where there is no metal, it ends deeper than any surface does. */
    private static final double NOTHING_MM = 1e3;

    /** Stones that look along the finger have no edge across. */
    private static final double FLATTEST = 1e-3;

    @Override
    public String key() {
        return "girdle-edge";
    }

    @Override
    public List<Finding> look(Look look) {
        List<Finding> findings = new ArrayList<>();
        for (StoneRow row : look.ring().design().stoneRows()) {
            StoneLayout layout = look.ring().layout(row.name());
            double inner = StoneChecks.inner(look.ring(), row);
            findings.add(edge(look, layout, inner));
            StoneLayout.Place lowest = layout.places().get(0);
            for (StoneLayout.Place place : layout.places()) {
                lowest = place.line().girdleRadius() < lowest.line().girdleRadius() - 1e-9 ? place : lowest;
            }
            RingPlace at = RingPlace.of(lowest, inner);
            findings.add(look.on("culet-to-finger", row.name())
                    .at(at)
                    .measured(new RowMeasures(look.ring(), row.name()).depthLeftMm()));
            findings.add(behind(look, layout, at, inner));
            boolean flush = look.ring().design().seats().stream()
                    .anyMatch(seats ->
                            seats.row().equals(row.name()) && seats.channel().isEmpty());
            if (flush) {
                findings.add(look.on("girdle-sink", row.name()).at(at).measured(row.sinkMm()));
                findings.add(table(look, row, at));
            }
        }
        return findings;
    }

    /** How far the table stands over the surface at the row's line: girdle and crown of the stone, less what it is sunk. */
    private static Finding table(Look look, StoneRow row, RingPlace at) {
        if (row.cut() != StoneCut.ROUND && row.cut() != StoneCut.OVAL) {
            return Look.open("table-surface", CheckTexts.text("crown.unknown"), row.name());
        }
        double above = aboveGirdleLine(row);
        return look.on("table-surface", row.name())
                .telling(Quantity.millimetres(Math.max(0, row.sinkMm() - above)).toString())
                .telling(Quantity.millimetres(above).toString())
                .telling(Quantity.millimetres(row.sinkMm()).toString())
                .at(at)
                .measured(above - row.sinkMm());
    }

    /** How high a stone stands above its girdle line: girdle and crown of the reference stone, mm. */
    static double aboveGirdleLine(StoneRow row) {
        return (row.girdleShare() + BrilliantProportions.REFERENCE.crownHeightPercent() / 100)
                * row.size().widthMm();
    }

    private Finding edge(Look look, StoneLayout layout, double inner) {
        StoneRow row = layout.row();
        PartSection part = look.ring().section(row.part());
        double least = Double.POSITIVE_INFINITY;
        StoneLayout.Place nearest = layout.places().get(0);
        for (StoneLayout.Place place : layout.even() ? SeatChecks.firsts(layout) : layout.places()) {
            double left = beside(look, part, place) - row.widthMm() / 2;
            if (left < least - 1e-9) {
                least = left;
                nearest = place;
            }
        }
        return look.on(key(), row.name())
                .telling(row.part())
                .at(RingPlace.of(nearest, inner))
                .measured(least);
    }

    /** From a girdle's centre to the nearer edge of its part, mm in the girdle's plane. */
    private static double beside(Look look, PartSection part, StoneLayout.Place place) {
        StoneLayout.Line line = place.line();
        Bounds metal = metal(look, part, place);
        // Where walls stand upright, a part ends on the line straight out from its end.
        double out = Math.max(line.axisOut(), FLATTEST);
        double fingertip = (metal.maxX() - line.across()) / out;
        double hand = (line.across() - metal.minX()) / out;
        if (!part.isTurned()) {
            return Math.min(fingertip, hand);
        }
        Heights own = Heights.ofSeat(Sections.turned(List.of(part)), line);
        Heights whole = Heights.ofSeat(
                Sections.turned(look.ring().sections().stream()
                        .filter(each -> each.band().equals(part.band()) && each.isTurned())
                        .toList()),
                line);
        double joint = joint(look) + 2 * STEP_MM;
        double toFingertip = edge(whole, 1, Math.min(fingertip, own.end(1)), joint);
        double toHand = edge(whole, -1, Math.min(hand, own.end(-1)), joint);
        return Math.min(rounded(part, line, 1, toFingertip), rounded(part, line, -1, toHand));
    }

    /** Where a rounded edge takes the last of the way to a side: there metal ends at the girdle's plane before the part does. */
    private static double rounded(PartSection part, StoneLayout.Line line, double side, double way) {
        OptionalDouble end = Sections.toTheEnd(
                Sections.turned(List.of(part)),
                new Point(line.across(), line.girdleRadius()),
                side * line.axisOut(),
                -side * line.axisAcross());
        return end.isPresent() && end.getAsDouble() > way - 3 * STEP_MM ? Math.min(way, end.getAsDouble()) : way;
    }

    /**
     * How far along the girdle's plane it is to where the surface, once below it, falls away from it by more than 45 degrees, mm; a limit where it
     * does not.
     *
     * @param joint how far beyond there must be nothing as high, so that a joint is no edge
     */
    private static double edge(Heights seen, double side, double limit, double joint) {
        double before = Double.POSITIVE_INFINITY;
        // Nearer to the part's end than two steps, that end is meant, which is known better.
        for (double way = 0; way < limit - 2 * STEP_MM; way += STEP_MM) {
            double top = top(seen, side * way);
            if (Math.max(top, top(seen, side * (way + joint))) < -1e-6 && before - top > STEP_MM && way > 0) {
                return way;
            }
            before = top;
        }
        return limit;
    }

    private static double top(Heights seen, double across) {
        return seen.whole(across).map(Heights.Span::to).orElse(-NOTHING_MM);
    }

    /** Metal behind a row: not where its seats leave none. */
    private static Finding behind(Look look, StoneLayout layout, RingPlace at, double inner) {
        StoneRow row = layout.row();
        String key = "behind-row";
        double floor = Double.POSITIVE_INFINITY;
        for (Seats seats : look.ring().design().seats()) {
            if (seats.row().equals(row.name())) {
                Optional<Seats.Channel> channel = seats.channel();
                if (channel.isEmpty() && seats.holeMm() > 0 && StonePlaces.reachesFinger(look, seats)) {
                    return Look.open(key, CheckTexts.text("behind-row.open", seats.name()), row.name());
                } else if (channel.isPresent() && channel.get().barsEvery() > 0) {
                    return Look.open(key, CheckTexts.text("behind-row.slot", seats.name()), row.name());
                }
                floor = Math.min(floor, channel.map(Seats.Channel::floorMm).orElse(floor));
            }
        }
        if (Double.isFinite(floor)) {
            return look.on(key, row.name()).at(at).advising("behind-row.floor").measured(floor);
        }
        double least = Double.POSITIVE_INFINITY;
        for (StoneLayout.Place place : layout.even() ? SeatChecks.firsts(layout) : layout.places()) {
            least = Math.min(least, under(look, row, place, inner));
        }
        return look.on(key, row.name()).at(at).measured(least);
    }

    /** Metal from the girdle's centre, or from the floor of its hole, to the first void under it, mm; to the finger where the part is not turned. */
    private static double under(Look look, StoneRow row, StoneLayout.Place place, double inner) {
        PartSection part = look.ring().section(row.part());
        List<PartSection> parts = look.ring().sections().stream()
                .filter(each -> each.band().equals(part.band()))
                .toList();
        double whole = place.line().girdleRadius() - inner;
        if (!parts.stream().allMatch(PartSection::isTurned)) {
            return whole;
        }
        List<PartSection> undrilled = parts.stream()
                .filter(each -> !StonePlaces.isDrilled(look, row, each.name()))
                .toList();
        double joint = filled(look, part.name()) + 1e-3;
        double metal = 0;
        List<Heights.Span> spans = new Heights(undrilled).at(place.line().across() + 1e-6);
        double top = spans.isEmpty() ? inner : spans.get(spans.size() - 1).to();
        double reached = undrilled.size() == parts.size()
                ? place.line().girdleRadius()
                : Math.min(place.line().girdleRadius(), top);
        for (int i = spans.size() - 1; i >= 0; i--) {
            Heights.Span span = spans.get(i);
            if (span.from() < reached && span.to() >= reached - joint) {
                metal += Math.min(reached, span.to()) - span.from();
                reached = span.from();
            }
        }
        return Math.min(whole, metal);
    }

    /** The clearance of the grooves that keep a part, are cut from it or closed by it, mm: solder, a weld or poured metal fills it; 0 where nothing does. */
    static double filled(Look look, String part) {
        return look.ring().design().grooves().stream()
                .filter(groove -> groove.from().contains(part)
                        || groove.collar().filter(part::equals).isPresent()
                        || groove.keep()
                                .filter(keep -> keep.part().equals(part))
                                .isPresent())
                .filter(groove ->
                        groove.joint().filter(joint -> !joint.equals("press")).isPresent() || groove.isPoured())
                .mapToDouble(Groove::fitMm)
                .max()
                .orElse(0);
    }

    /** The widest clearance round a kept part, mm: it is no edge. */
    private static double joint(Look look) {
        return look.ring().design().grooves().stream()
                .mapToDouble(Groove::fitMm)
                .max()
                .orElse(0);
    }

    private static Bounds metal(Look look, PartSection part, StoneLayout.Place place) {
        boolean wholeBand = part.name().equals(part.band().name());
        return !part.isTurned() && wholeBand
                ? look.ring().outline(part.band(), place.angle()).bounds()
                : look.ring().bounds(part.name());
    }
}
