// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.ArrayList;
import java.util.List;

import bandwright.dsl.model.StoneRow;

/** Stones that are cut deeper than the diamond whose proportions are reckoned with, as long as nobody has measured them. */
final class StoneDepths implements Check {
    @Override
    public String key() {
        return "stone-depth";
    }

    @Override
    public List<Finding> look(Look look) {
        List<Finding> findings = new ArrayList<>();
        for (StoneRow row : look.ring().design().stoneRows()) {
            if (row.depthIsGuessed()) {
                String told =
                        CheckTexts.text("stone-depth.unknown", row.material().name());
                findings.add(Look.open(key(), told, row.name()));
            }
        }
        return findings;
    }
}
