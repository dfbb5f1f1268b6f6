// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.ArrayList;
import java.util.List;

import bandwright.dsl.construct.PartSection;
import bandwright.dsl.construct.StoneLayout;
import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.measure.RowMeasures;
import bandwright.dsl.model.Groove;
import bandwright.dsl.model.Seats;
import bandwright.dsl.model.StoneRow;

/**
 * Where stones stand in their part: girdles and its edges, culets and the finger, metal behind the row, sink. An edge is where the part ends, seen
 * from above, at the stone, or where its surface falls below the girdle by more than 45 degrees; of a part that is not turned and not a whole band, where it ends anywhere, which is approximate. Metal behind
 * a row is taken from the girdle to the first void under it or the finger, behind a channel from its floor if it has one.
 */
final class EdgeChecks implements Check {
    private static final double STEP_MM = 0.01;

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
            double behind = look.ring().design().seats().stream()
                    .filter(seats -> seats.row().equals(row.name()))
                    .flatMap(seats -> seats.channel().stream())
                    .mapToDouble(Seats.Channel::floorMm)
                    .filter(floor -> floor > 0)
                    .min()
                    .orElse((layout.even() ? SeatChecks.firsts(layout) : layout.places())
                            .stream()
                                    .mapToDouble(place -> under(look, row, place, inner))
                                    .min()
                                    .orElse(0));
            findings.add(look.on("behind-row", row.name()).at(at).measured(behind));
            boolean flush = look.ring().design().seats().stream()
                    .anyMatch(seats ->
                            seats.row().equals(row.name()) && seats.channel().isEmpty());
            if (flush) {
                findings.add(look.on("girdle-sink", row.name()).at(at).measured(row.sinkMm()));
            }
        }
        return findings;
    }

    private Finding edge(Look look, StoneLayout layout, double inner) {
        StoneRow row = layout.row();
        PartSection part = look.ring().section(row.part());
        double least = Double.POSITIVE_INFINITY;
        StoneLayout.Place nearest = layout.places().get(0);
        for (StoneLayout.Place place : layout.even() ? SeatChecks.firsts(layout) : layout.places()) {
            double half = row.widthMm() / 2 * place.line().axisOut();
            double left = beside(look, part, place) - half;
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

    /** From a girdle's centre to the nearer end of its part, mm along the finger. */
    private static double beside(Look look, PartSection part, StoneLayout.Place place) {
        double across = place.line().across();
        Bounds metal = metal(look, part, place);
        double left = Math.min(metal.maxX() - across, across - metal.minX());
        if (part.isTurned()) {
            Heights heights = new Heights(look.ring().sections().stream()
                    .filter(each -> each.band().equals(part.band()) && each.isTurned())
                    .toList());
            double joint = joint(look) + 2 * STEP_MM;
            for (double side : new double[] {1, -1}) {
                double end = wall(heights, across, side, place.line().girdleRadius(), left, joint);
                left = end < left - 2 * STEP_MM ? end : left;
            }
        }
        return left;
    }

    /** How far along the finger it is to where the surface, below the girdle, falls by more than 45 degrees, mm; a limit where it does not. */
    private static double wall(Heights heights, double across, double side, double girdle, double limit, double joint) {
        double before = Double.POSITIVE_INFINITY;
        for (double way = 0; way < limit; way += STEP_MM) {
            double top =
                    heights.whole(across + side * way).map(Heights.Span::to).orElse(0.0);
            double next = heights.whole(across + side * (way + joint))
                    .map(Heights.Span::to)
                    .orElse(0.0);
            if (Math.max(top, next) < girdle - 1e-6 && before - top > STEP_MM && way > 0) {
                return way;
            }
            before = top;
        }
        return limit;
    }

    /** Metal from the girdle's centre to the first void under it, mm; to the finger where the part is not turned. */
    private static double under(Look look, StoneRow row, StoneLayout.Place place, double inner) {
        PartSection part = look.ring().section(row.part());
        List<PartSection> parts = look.ring().sections().stream()
                .filter(each -> each.band().equals(part.band()))
                .toList();
        double whole = place.line().girdleRadius() - inner;
        if (!parts.stream().allMatch(PartSection::isTurned)) {
            return whole;
        }
        double girdle = place.line().girdleRadius();
        double joint = joint(look) + 1e-3;
        double metal = 0;
        double reached = girdle;
        List<Heights.Span> spans = new Heights(parts).at(place.line().across() + 1e-6);
        for (int i = spans.size() - 1; i >= 0; i--) {
            Heights.Span span = spans.get(i);
            if (span.from() < reached && span.to() >= reached - joint) {
                metal += Math.min(reached, span.to()) - span.from();
                reached = span.from();
            }
        }
        return Math.min(whole, metal);
    }

    /** The widest clearance round a kept part, mm: the joint fills it. */
    private static double joint(Look look) {
        return look.ring().design().grooves().stream()
                .flatMap(groove -> groove.keep().stream())
                .mapToDouble(Groove.Keep::fitMm)
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
