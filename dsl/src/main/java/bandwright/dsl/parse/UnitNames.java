// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.parse;

import java.util.List;
import java.util.Locale;
import java.util.Map;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.diagnostic.NearNames;
import bandwright.dsl.quantity.Unit;

/** The units people mean when they write them out, or slip. */
final class UnitNames {
    private static final Map<String, String> WRITTEN_OUT = Map.ofEntries(
            Map.entry("millimetre", "mm"),
            Map.entry("millimeter", "mm"),
            Map.entry("centimetre", "cm"),
            Map.entry("centimeter", "cm"),
            Map.entry("micron", "um"),
            Map.entry("inches", "inch"),
            Map.entry("gram", "g"),
            Map.entry("gramme", "g"),
            Map.entry("gr", "g"),
            Map.entry("kilogram", "kg"),
            Map.entry("carat", "ct"),
            Map.entry("cts", "ct"),
            Map.entry("point", "pt"),
            Map.entry("pennyweight", "dwt"),
            Map.entry("ounce", "ozt"),
            Map.entry("oz", "ozt"),
            Map.entry("degree", "deg"),
            Map.entry("percent", "%"));

    private UnitNames() {}

    /** The unit a word stands for, or nothing. */
    static @Nullable String nearest(String word) {
        String lower = word.toLowerCase(Locale.ROOT);
        String singular = lower.endsWith("s") ? lower.substring(0, lower.length() - 1) : lower;
        if (WRITTEN_OUT.containsKey(lower)) {
            return WRITTEN_OUT.get(lower);
        } else if (WRITTEN_OUT.containsKey(singular)) {
            return WRITTEN_OUT.get(singular);
        } else if (Unit.symbols().contains(lower)) {
            return lower;
        }
        List<String> near = lower.length() < 2 ? List.of() : NearNames.nearest(lower, Unit.symbols());
        return near.isEmpty() ? null : near.get(0);
    }
}
