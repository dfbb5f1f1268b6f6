// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.measure;

import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.quantity.Unit;

/** Stones that are bought beyond those that are set. */
public final class Spares {
    private Spares() {}

    /**
     * How many, rounded up.
     *
     * @param spares a number of stones, or a share of the row's: in per cent, or below 1
     * @param count of stones set
     */
    public static int of(Quantity spares, int count) {
        boolean share = Unit.PERCENT.equals(spares.shown()) || spares.value() < 1;
        return (int) Math.ceil(share ? spares.value() * count - 1e-9 : spares.value());
    }
}
