// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.ArrayList;
import java.util.List;

import bandwright.dsl.construct.StoneLayout;
import bandwright.dsl.model.StoneRow;

/** Stones of two rows, with their crowns and pavilions. */
final class RowChecks implements Check {
    /** Rows of so many stones together are not compared stone by stone. */
    private static final int MOST_PAIRS = 4_000_000;

    @Override
    public String key() {
        return "rows-apart";
    }

    @Override
    public List<Finding> look(Look look) {
        List<StoneRow> rows = look.ring().design().stoneRows();
        List<Finding> findings = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            for (int j = i + 1; j < rows.size(); j++) {
                findings.add(pair(look, rows.get(i), rows.get(j)));
            }
        }
        return findings;
    }

    private Finding pair(Look look, StoneRow first, StoneRow second) {
        StoneLayout one = look.ring().layout(first.name());
        StoneLayout other = look.ring().layout(second.name());
        if ((double) one.count() * other.count() > MOST_PAIRS) {
            return Look.open(key(), "they are too many stones to compare each with each", first.name(), second.name());
        }
        List<StoneBody> bodies = other.places().stream()
                .map(place -> StoneBody.whole(place, second))
                .toList();
        StonePairs pairs = new StonePairs();
        for (StoneLayout.Place place : one.places()) {
            StoneBody body = StoneBody.whole(place, first);
            bodies.forEach(each -> pairs.add(body, each));
        }
        return look.on(key(), first.name(), second.name())
                .at(pairs.place(StoneChecks.inner(look.ring(), first)))
                .measured(pairs.least());
    }
}
