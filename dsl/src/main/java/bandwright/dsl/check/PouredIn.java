// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.TreeMap;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.construct.PartSection;
import bandwright.dsl.material.Metal;
import bandwright.dsl.material.Pouring;
import bandwright.dsl.model.Groove;
import bandwright.dsl.quantity.QuantityFormat;

/** Metal that is poured into a groove melts or spoils the ring, or it does not; of several metals the one that fares worst is told. */
final class PouredIn {
    private PouredIn() {}

    static Finding finding(Look look, Groove groove, String kept) {
        Metal poured = look.ring().section(kept).metal();
        TreeMap<String, Metal> into = new TreeMap<>();
        for (PartSection part : look.ring().sections()) {
            if (groove.from().contains(part.name()) || groove.leaving().contains(part.name())) {
                into.put(part.metal().name(), part.metal());
            }
        }
        Pouring worst = Pouring.STANDS;
        Metal spoilt = poured;
        for (Metal metal : into.values()) {
            Pouring pouring = Pouring.of(poured, metal);
            if (pouring.compareTo(worst) < 0) {
                worst = pouring;
                spoilt = metal;
            }
        }
        return switch (worst) {
            case RUINS ->
                Look.without("let-in", Severity.FAULT, kept)
                        .saying("let-in.cast.cold")
                        .advising("let-in.cast.cold")
                        .telling(spoilt.name())
                        .holds(false);
            case MELTS, MELTS_FAR_BELOW ->
                told(Severity.FAULT, "let-in.cast", kept, poured, spoilt).holds(false);
            case NEAR ->
                told(Severity.ADVICE, "let-in.cast.near", kept, poured, spoilt)
                        .telling(degrees(poured.liquidusC()))
                        .telling(degrees(spoilt.solidusC()))
                        .holds(false);
            case BOND_UNKNOWN -> Look.open("let-in", CheckTexts.text("let-in.cast.turned"), kept);
            case UNKNOWN ->
                Look.open("let-in", "the melting range of its metal or of what it is poured into is not known", kept);
            case STANDS -> Look.without("let-in", Severity.FAULT, kept).holds(true);
        };
    }

    private static Look.Builder told(Severity severity, String key, String kept, Metal poured, Metal into) {
        return Look.without("let-in", severity, kept)
                .saying(key)
                .advising(key)
                .telling(poured.name())
                .telling(into.name());
    }

    private static String degrees(@Nullable Double celsius) {
        return celsius == null ? "" : QuantityFormat.number(celsius, 0);
    }
}
