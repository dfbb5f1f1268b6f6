// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import bandwright.dsl.construct.Body;
import bandwright.dsl.material.LawfulFineness;

/** The weight of each precious metal against the weight from which a hallmark is compulsory in the United Kingdom; other laws differ. */
final class HallmarkCautions implements Check {
    @Override
    public String key() {
        return "hallmark";
    }

    @Override
    public List<Finding> look(Look look) {
        Map<String, Double> weights = new TreeMap<>();
        for (Body body : look.ring().bodies()) {
            if (!LawfulFineness.holds(body.section().metal())) {
                continue;
            }
            double grams = body.volumeMm3() * body.section().metal().densityGPerCm3() / 1000;
            weights.merge(body.section().metal().family(), grams, Double::sum);
        }
        List<Finding> findings = new ArrayList<>();
        weights.forEach((family, grams) ->
                findings.add(look.on(key(), look.limits().get("hallmark-" + family), family)
                        .telling(family)
                        .obliging(grams, "hallmark.limit")));
        return findings;
    }
}
