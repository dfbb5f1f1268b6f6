// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.explore;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

import bandwright.dsl.construct.Ring;
import bandwright.dsl.view.Table;

/**
 * The design and its options.
 *
 * @param rings those that can be made, by name, the design first
 */
public record Compared(Table table, Map<String, Ring> rings) {
    public Compared {
        rings = Collections.unmodifiableMap(new LinkedHashMap<>(rings));
    }
}
