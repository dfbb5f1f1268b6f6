// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import bandwright.dsl.construct.PartSection;
import bandwright.dsl.material.Metal;
import bandwright.dsl.material.Nickel;
import bandwright.dsl.quantity.Quantity;

/** Nickel, cadmium and lead, as far as a metal's recipe tells. What it does not state is not looked at. */
final class MetalCautions implements Check {
    @Override
    public String key() {
        return "nickel";
    }

    @Override
    public List<Finding> look(Look look) {
        Map<String, Metal> metals = new TreeMap<>();
        for (PartSection part : look.ring().sections()) {
            metals.put(part.metal().name(), part.metal());
        }
        List<Finding> findings = new ArrayList<>();
        metals.values().forEach(metal -> findings.add(nickel(look, metal)));
        metals.values().forEach(metal -> findings.add(share(look, "cadmium", "Cd", metal)));
        metals.values().forEach(metal -> findings.add(share(look, "lead", "Pb", metal)));
        return findings;
    }

    private Finding nickel(Look look, Metal metal) {
        if (metal.nickel() == Nickel.UNKNOWN) {
            return Look.open(key(), CheckTexts.text("nickel.unknown"), metal.name());
        }
        double share = shareOf(metal, "Ni");
        if (metal.nickel() == Nickel.YES && share == 0) {
            return look.on(key(), metal.name()).saying("nickel.held").holds(false);
        }
        Limit rule = look.limits().get(key());
        Quantity measured =
                new Quantity(share, rule.value().dimension(), rule.value().shown());
        // The law limits what a ring gives off: a bare "at most 0 %" would read as if it limited what the alloy holds.
        String told = rule.value().value() == 0 ? CheckTexts.text("nickel.limit") : rule.text();
        return look.on(key(), rule, metal.name()).held(measured, rule.value(), told, rule.margin(share));
    }

    private static Finding share(Look look, String check, String symbol, Metal metal) {
        return metal.composition().isEmpty()
                ? Look.open(check, CheckTexts.text("recipe.unknown"), metal.name())
                : look.on(check, metal.name()).exact().measured(shareOf(metal, symbol));
    }

    private static double shareOf(Metal metal, String symbol) {
        return metal.composition().entrySet().stream()
                .filter(entry -> entry.getKey().symbol().equals(symbol))
                .mapToDouble(Map.Entry::getValue)
                .sum();
    }
}
