// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

import bandwright.dsl.construct.PartSection;
import bandwright.dsl.material.Metal;
import bandwright.dsl.material.Working;
import bandwright.dsl.model.Groove;

/** Metal that is poured into a groove melts the ring if it flows only where that begins to melt. */
final class PouredIn {
    private static final Set<String> SOFTER = Set.of("gold", "silver");

    private PouredIn() {}

    static Finding finding(Look look, Groove groove, String kept) {
        Metal poured = look.ring().section(kept).metal();
        Map<String, Metal> into = new TreeMap<>();
        for (PartSection part : look.ring().sections()) {
            if (groove.from().contains(part.name()) || groove.leaving().contains(part.name())) {
                into.put(part.metal().name(), part.metal());
            }
        }
        if (into.values().stream().anyMatch(metal -> Working.of(metal).isTurned())) {
            return Look.open("let-in", CheckTexts.text("let-in.cast.turned"), kept);
        }
        boolean known = !into.isEmpty() && poured.liquidusC() != null;
        for (Metal metal : into.values()) {
            Double begins = metal.solidusC();
            Double flows = poured.liquidusC();
            boolean melts = (begins != null && flows != null)
                    ? flows >= begins
                    : poured.family().equals("platinum") && SOFTER.contains(metal.family());
            known &= begins != null;
            if (melts) {
                return Look.without("let-in", Severity.FAULT, kept)
                        .saying("let-in.cast")
                        .advising("let-in.cast")
                        .telling(poured.name())
                        .telling(metal.name())
                        .holds(false);
            }
        }
        return known
                ? Look.without("let-in", Severity.FAULT, kept).holds(true)
                : Look.open("let-in", "the melting range of its metal or of what it is poured into is not known", kept);
    }
}
