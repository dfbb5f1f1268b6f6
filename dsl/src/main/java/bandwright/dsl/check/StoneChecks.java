// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import bandwright.dsl.construct.Ring;
import bandwright.dsl.construct.StoneLayout;
import bandwright.dsl.model.StoneRow;

/** Stones beside each other in one row: at their girdles, and below them where they lean towards each other. */
final class StoneChecks implements Check {
    @Override
    public String key() {
        return "stone-gap";
    }

    @Override
    public List<Finding> look(Look look) {
        List<Finding> findings = new ArrayList<>();
        for (StoneRow row : look.ring().design().stoneRows()) {
            StoneLayout layout = look.ring().layout(row.name());
            double inner = inner(look.ring(), row);
            if (layout.gapMm().isPresent()) {
                Optional<StoneLayout.Place[]> pair = layout.nearestNeighbours();
                findings.add(look.on(key(), row.name())
                        .at(pair.map(two -> RingPlace.between(two[0], two[1], inner))
                                .orElse(null))
                        .measured(layout.gapMm().getAsDouble()));
                findings.add(pavilions(look, layout, inner));
            }
        }
        return findings;
    }

    static double inner(Ring ring, StoneRow row) {
        return ring.section(row.part()).band().finger().innerRadiusMm();
    }

    private static Finding pavilions(Look look, StoneLayout layout, double inner) {
        StoneRow row = layout.row();
        StonePairs pairs = new StonePairs();
        if (layout.even()) {
            layout.neighbours().stream().limit(1).forEach(pair -> pairs.add(below(pair[0], row), below(pair[1], row)));
        } else {
            layout.neighbours().forEach(pair -> pairs.add(below(pair[0], row), below(pair[1], row)));
        }
        int perLine = layout.perLine();
        int stones = layout.even() && layout.full() ? 1 : perLine;
        for (int first = 0; first < layout.lines().size(); first++) {
            for (int second = first + 1; second < layout.lines().size(); second++) {
                for (int i = 0; i < stones; i++) {
                    StoneBody one = below(layout.places().get(first * perLine + i), row);
                    for (int j = 0; j < perLine; j++) {
                        pairs.add(one, below(layout.places().get(second * perLine + j), row));
                    }
                }
            }
        }
        return look.on("pavilion-gap", row.name()).at(pairs.place(inner)).measured(pairs.least());
    }

    private static StoneBody below(StoneLayout.Place place, StoneRow row) {
        return StoneBody.pavilion(place, row);
    }
}
