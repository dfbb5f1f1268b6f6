// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.measure;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.model.Fault;
import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.quantity.Unit;
import bandwright.dsl.source.Place;

/** Stones that are bought beyond those that are set. */
public final class Spares {
    private Spares() {}

    /**
     * Half a stone cannot be meant, half of them may be: a figure that is written without a unit must be whole.
     *
     * @param plain whether it is written as a number without a unit
     * @param place where it is said
     * @throws Fault if it is neither a whole number nor in per cent
     */
    public static void check(Quantity spares, boolean plain, Place place) {
        if (plain && spares.value() != Math.rint(spares.value())) {
            Diagnostic.Builder fault = Diagnostic.error("spares-unclear", place).with(spares.toString());
            if (spares.value() < 1) {
                fault.suggest(place, spares.in(Unit.PERCENT).toString());
            }
            throw new Fault(fault.build());
        }
    }

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
