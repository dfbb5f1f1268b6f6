// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.material;

import java.util.Map;

/** Whether a metal has nickel in it, which many skins do not bear and the law limits. */
public enum Nickel {
    YES,
    NO,
    /** The recipe is not stated. */
    UNKNOWN;

    static Nickel of(Map<Element, Double> composition) {
        return composition.keySet().stream()
                        .anyMatch(element -> element.symbol().equals("Ni"))
                ? YES
                : NO;
    }
}
