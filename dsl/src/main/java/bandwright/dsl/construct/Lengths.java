// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.quantity.QuantityFormat;

/** Lengths as the language shows them. */
final class Lengths {
    private Lengths() {}

    static String text(double mm) {
        return QuantityFormat.format(Quantity.millimetres(mm));
    }
}
