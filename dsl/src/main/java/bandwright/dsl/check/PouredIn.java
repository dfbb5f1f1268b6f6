// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

import bandwright.dsl.construct.PartSection;
import bandwright.dsl.material.Metal;
import bandwright.dsl.material.Working;
import bandwright.dsl.model.Groove;
import bandwright.dsl.quantity.QuantityFormat;

/** Metal that is poured into a groove melts the ring if it flows only where that begins to melt. */
final class PouredIn {
    /** Melts above 1500 degrees C, gold and silver alloys below 1100: from memory. */
    private static final Set<String> HARDER = Set.of("platinum", "palladium");

    private static final Set<String> SOFTER = Set.of("gold", "silver");

    /** Poured metal is hotter than where it begins to flow by so much or more, degrees C (common practice, no source). */
    private static final double HOTTER_C = 100;

    private PouredIn() {}

    static Finding finding(Look look, Groove groove, String kept) {
        Metal poured = look.ring().section(kept).metal();
        Map<String, Metal> into = new TreeMap<>();
        for (PartSection part : look.ring().sections()) {
            if (groove.from().contains(part.name()) || groove.leaving().contains(part.name())) {
                into.put(part.metal().name(), part.metal());
            }
        }
        for (Metal metal : into.values()) {
            if (Working.of(metal) == Working.TURNED_COLD) {
                return Look.without("let-in", Severity.FAULT, kept)
                        .saying("let-in.cast.cold")
                        .advising("let-in.cast.cold")
                        .telling(metal.name())
                        .holds(false);
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
                    : HARDER.contains(poured.family()) && SOFTER.contains(metal.family());
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
        for (Metal metal : into.values()) {
            Double begins = metal.solidusC();
            Double flows = poured.liquidusC();
            if (begins != null && flows != null && begins - flows < HOTTER_C) {
                return Look.without("let-in", Severity.ADVICE, kept)
                        .saying("let-in.cast.near")
                        .advising("let-in.cast.near")
                        .telling(poured.name())
                        .telling(metal.name())
                        .telling(QuantityFormat.number(flows, 0))
                        .telling(QuantityFormat.number(begins, 0))
                        .holds(false);
            }
        }
        return known
                ? Look.without("let-in", Severity.FAULT, kept).holds(true)
                : Look.open("let-in", "the melting range of its metal or of what it is poured into is not known", kept);
    }
}
