// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.ArrayList;
import java.util.List;

import bandwright.dsl.construct.PartSection;
import bandwright.dsl.construct.StoneLayout;
import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.measure.RowMeasures;
import bandwright.dsl.model.Seats;
import bandwright.dsl.model.StoneRow;

/**
 * Where stones stand in their part: girdles and its edges, culets and the finger, metal behind the row, sink. An edge is where the part ends, seen
 * from above, at the stone; of a part that is not turned and not a whole band, where it ends anywhere, which is approximate. Metal behind
 * a row is taken from the finger to the girdle, behind a channel to its floor if it has one.
 */
final class EdgeChecks implements Check {
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
                    .orElse(lowest.line().girdleRadius() - inner);
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
        for (StoneLayout.Place place : layout.places()) {
            Bounds metal = metal(look, part, place);
            double half = row.widthMm() / 2 * place.line().axisOut();
            double across = place.line().across();
            double left = Math.min(metal.maxX() - across - half, across - half - metal.minX());
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

    private static Bounds metal(Look look, PartSection part, StoneLayout.Place place) {
        boolean wholeBand = part.name().equals(part.band().name());
        return !part.isTurned() && wholeBand
                ? look.ring().outline(part.band(), place.angle()).bounds()
                : look.ring().bounds(part.name());
    }
}
