// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.explore;

import java.util.List;
import java.util.Optional;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.quantity.Unit;
import bandwright.dsl.resolve.expression.Value;
import bandwright.dsl.view.Table;

/**
 * A column of a catalogue. Its unit is settled before the first row, for nobody sees all rows at once.
 *
 * @param unit none where the values are words
 */
record SweepColumn(String name, @Nullable Unit unit) {
    /** A micrometre, a microgram: finer than any figure is true. */
    private static final int DECIMALS = 6;

    /** @param samples some of its values */
    static SweepColumn of(String name, List<Optional<Value>> samples) {
        return new SweepColumn(name, ValueColumn.unit(samples));
    }

    Table.Column head() {
        return unit == null ? Table.Column.words(name) : Table.Column.numbers(name, unit.symbol());
    }

    String cell(Optional<Value> value) {
        if (value.isEmpty()) {
            return "";
        }
        boolean fits = unit != null
                && value.get() instanceof Value.Amount amount
                && amount.quantity().dimension().equals(unit.dimension());
        return unit != null && fits
                ? ValueColumn.text(value.get(), unit, DECIMALS)
                : value.get().text();
    }
}
