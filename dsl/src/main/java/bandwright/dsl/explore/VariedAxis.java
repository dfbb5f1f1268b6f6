// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.explore;

import java.util.List;

import bandwright.dsl.resolve.expression.Value;

/** A definition and the values it is to have, one after the other. */
record VariedAxis(String name, List<Value> values) {
    VariedAxis {
        values = List.copyOf(values);
    }

    /** Whether its values can change a body: a metal, a stone's material or a price cannot. */
    boolean changesShapes() {
        Value first = values.get(0);
        return first instanceof Value.Amount amount
                ? amount.quantity().dimension().money() == 0
                : !(first instanceof Value.MetalValue || first instanceof Value.StoneValue);
    }
}
