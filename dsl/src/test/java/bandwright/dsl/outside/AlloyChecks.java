// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.outside;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import bandwright.dsl.material.Element;
import bandwright.dsl.material.Elements;
import bandwright.dsl.material.MixingRule;
import bandwright.dsl.material.OutsideData;

/**
 * The mixing rule against every published density whose recipe is stated ({@code alloys.csv}), in per cent of the
 * published figure. That the GOST golds agree so well is no proof: they were probably computed by the rule.
 */
final class AlloyChecks {
    private AlloyChecks() {}

    /** Allowed deviation, in per cent, where nothing else is known. */
    private static final double USUAL = 0.4;

    private static final Map<String, Known> KNOWN = known();

    private record Known(double least, double most, String why) {}

    private static Map<String, Known> known() {
        Map<String, Known> known = new LinkedHashMap<>();
        known.put("gost-500-100", new Known(-19.3, -19.2, "misprint: 15.47 for about 12.47"));
        known.put("pt950co", new Known(-3.8, -3.6, "suspect: 20.80 fits no platinum with 5 % cobalt"));
        known.put("14k-us-yellow", new Known(-1.8, -1.6, "supplier's figure of another 14 karat yellow"));
        known.put("10k-us-yellow", new Known(-2.3, -2.1, "supplier's figure of another 10 karat yellow"));
        known.put(
                "14k-white-ni",
                new Known(2.1, 2.3, "caster's figure of another nickel white; nickel also mixes badly"));
        known.put("pd850", new Known(-1.0, -0.9, "palladium, silver and nickel contract"));
        known.put("ti-gr5", new Known(-1.1, -1.0, "beta titanium is denser than the element"));
        known.put("cocr-f75", new Known(0.7, 0.9, "density from memory"));
        known.put("9k-yellow", new Known(0.5, 0.7, "density from a wax multiplier, recipe from memory"));
        known.put("wgc-9k-white", new Known(0.4, 0.5, "density from a wax multiplier, recipe from memory"));
        return known;
    }

    static List<OutsideCheck> all() {
        List<OutsideCheck> checks = new ArrayList<>();
        for (OutsideData.Row row : OutsideData.rows("alloys.csv")) {
            Map<Element, Double> composition = composition(row);
            if (composition.isEmpty() || !row.has("density_published_gcm3")) {
                continue;
            }
            double published = row.number("density_published_gcm3");
            double tolerance = published * USUAL / 100;
            OutsideCheck check = OutsideCheck.within(
                            row.text("name"), published, MixingRule.density(composition), "g/cm3", tolerance, row)
                    .because(row.text("density_how"));
            Known known = KNOWN.get(row.text("id"));
            checks.add(
                    known == null
                            ? check
                            : check.differingBy(
                                    published * known.least / 100, published * known.most / 100, known.why));
        }
        return checks;
    }

    /** The recipe of a row, from its columns named after the elements' symbols; empty if it is not stated. */
    static Map<Element, Double> composition(OutsideData.Row row) {
        Map<Element, Double> composition = new LinkedHashMap<>();
        for (Element element : Elements.all()) {
            if (row.has(element.symbol())) {
                composition.put(element, row.number(element.symbol()) / 100);
            }
        }
        return composition;
    }
}
