// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

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
                StonePairs nearest = nearest(layout);
                findings.add(look.on(key(), row.name())
                        .saying(nearest.coincide() ? "stone-gap.same" : key())
                        .at(nearest.place(inner))
                        .measured(layout.gapMm().getAsDouble()));
                findings.add(pavilions(look, layout, inner));
            }
        }
        return findings;
    }

    static double inner(Ring ring, StoneRow row) {
        return ring.section(row.part()).band().finger().innerRadiusMm();
    }

    /** The two stones of a row whose girdles are nearest each other. */
    static StonePairs nearest(StoneLayout layout) {
        return pairs(layout, place -> StoneBody.girdle(place, layout.row()));
    }

    private static Finding pavilions(Look look, StoneLayout layout, double inner) {
        StoneRow row = layout.row();
        StonePairs pairs = pairs(layout, place -> StoneBody.pavilion(place, row));
        return look.on("pavilion-gap", row.name()).at(pairs.place(inner)).measured(pairs.least());
    }

    /** Neighbours of all lines, where those of a line stand alike its first two, and stones of different lines. */
    private static StonePairs pairs(StoneLayout layout, Function<StoneLayout.Place, StoneBody> body) {
        StonePairs pairs = new StonePairs();
        List<StoneLayout.Place[]> neighbours = layout.neighbours();
        int perLineGaps = layout.even() ? neighbours.size() / layout.lines().size() : 1;
        for (int i = 0; i < neighbours.size(); i += perLineGaps) {
            pairs.add(body.apply(neighbours.get(i)[0]), body.apply(neighbours.get(i)[1]));
        }
        int perLine = layout.perLine();
        int stones = layout.even() && layout.full() ? 1 : perLine;
        for (int first = 0; first < layout.lines().size(); first++) {
            for (int second = first + 1; second < layout.lines().size(); second++) {
                for (int i = 0; i < stones; i++) {
                    StoneBody one = body.apply(layout.places().get(first * perLine + i));
                    for (int j = 0; j < perLine; j++) {
                        pairs.add(one, body.apply(layout.places().get(second * perLine + j)));
                    }
                }
            }
        }
        return pairs;
    }
}
