// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.material;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * From which share of a precious metal on an alloy may be sold as it in the United Kingdom (Country profile United Kingdom; Hallmarking Convention; 2020s;
 * table). Other laws differ: Finland asks 500 of platinum (Fineness requirements; Tukes; n.d.).
 */
public final class LawfulFineness {
    /** In the order in which they count where an alloy holds several: from memory. */
    private static final Map<String, Integer> LEAST = least();

    private LawfulFineness() {}

    private static Map<String, Integer> least() {
        Map<String, Integer> least = new LinkedHashMap<>();
        least.put("platinum", 850);
        least.put("gold", 375);
        least.put("palladium", 500);
        least.put("silver", 800);
        return Collections.unmodifiableMap(least);
    }

    /** Whether a metal may be sold as the precious metal of its family; one whose fineness is not stated is taken for it. */
    public static boolean holds(Metal metal) {
        Integer least = LEAST.get(metal.family());
        Integer fineness = metal.fineness();
        return least != null && (fineness == null || fineness >= least);
    }

    /** The precious metal as which a recipe of mass shares (0 to 1) may be sold. */
    static Optional<String> metal(Map<Element, Double> composition) {
        for (Map.Entry<String, Integer> law : LEAST.entrySet()) {
            for (Map.Entry<Element, Double> part : composition.entrySet()) {
                // A hair's breadth less: 0.585 x 1000 is 584.99… in binary.
                if (part.getKey().name().equals(law.getKey()) && part.getValue() * 1000 >= law.getValue() - 1e-6) {
                    return Optional.of(law.getKey());
                }
            }
        }
        return Optional.empty();
    }
}
