// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.explore;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.quantity.QuantityFormat;
import bandwright.dsl.quantity.Unit;
import bandwright.dsl.resolve.expression.Value;
import bandwright.dsl.view.Table;

/** Values of one kind, below one another: their unit goes into the head, if all have the same. */
final class ValueColumn {
    private static final int DECIMALS = 3;
    private static final int MONEY_DECIMALS = 2;
    private static final int MOST_DECIMALS = 6;

    private final String name;
    private final List<Optional<Value>> values;
    /** None where the values are words, or of several kinds. */
    private final @Nullable Unit unit;

    private final int decimals;

    ValueColumn(String name, List<Optional<Value>> values) {
        this(name, values, List.of());
    }

    /** @param exact values that are told in more decimals than usual where they have them: a person set them */
    private ValueColumn(String name, List<Optional<Value>> values, List<Value> exact) {
        this.name = name;
        this.values = List.copyOf(values);
        this.unit = unit(values);
        int usual = unit == null || unit.dimension().money() == 0 ? DECIMALS : MONEY_DECIMALS;
        this.decimals = IntStream.rangeClosed(usual, MOST_DECIMALS)
                .filter(tried -> unit == null || exact.stream().allMatch(value -> isWhole(value, unit, tried)))
                .findFirst()
                .orElse(MOST_DECIMALS);
    }

    /** Whether so many decimals tell all of a value. */
    private static boolean isWhole(Value value, Unit unit, int decimals) {
        if (!(value instanceof Value.Amount amount)) {
            return true;
        }
        double count = amount.quantity().count(unit);
        double told = Double.parseDouble(QuantityFormat.number(count, decimals));
        return Math.abs(told - count) <= Quantity.EQUAL_WITHIN * Math.abs(count);
    }

    /** The column of what varies. */
    static ValueColumn of(VariedAxis axis, List<Optional<Value>> values) {
        return new ValueColumn(axis.name(), values, axis.values());
    }

    /** The unit that all of some values can be told in; none where some are words, or they are of several kinds. */
    static @Nullable Unit unit(List<Optional<Value>> values) {
        Unit unit = null;
        for (Value value : values.stream().flatMap(Optional::stream).toList()) {
            if (!(value instanceof Value.Amount amount)) {
                return null;
            }
            Quantity quantity = amount.quantity();
            if (unit == null) {
                unit = quantity.shown() == null ? Unit.shownFor(quantity.dimension()) : quantity.shown();
            } else if (!unit.dimension().equals(quantity.dimension())) {
                return null;
            }
        }
        return unit;
    }

    String name() {
        return name;
    }

    /** The unit in the head; empty for plain numbers and for words. */
    String unitText() {
        return unit == null ? "" : unit.symbol();
    }

    boolean isNumbers() {
        return unit != null;
    }

    Table.Column head() {
        return unit == null ? Table.Column.words(name) : Table.Column.numbers(name, unit.symbol());
    }

    String cell(int row) {
        Value value = values.get(row).orElse(null);
        if (value == null) {
            return "";
        }
        return unit == null ? value.text() : text(value, unit, decimals);
    }

    /** A value in a unit, without the unit. */
    static String text(Value value, Unit unit, int decimals) {
        return value instanceof Value.Amount amount
                ? QuantityFormat.number(amount.quantity().count(unit), decimals)
                : value.text();
    }

    /** How many of the column's unit; not-a-number where there is no value. */
    double number(int row) {
        return unit != null && values.get(row).orElse(null) instanceof Value.Amount amount
                ? amount.quantity().count(unit)
                : Double.NaN;
    }

    /** The columns of several lists of values, each list a row. */
    static List<ValueColumn> across(List<String> names, List<List<Optional<Value>>> rows) {
        List<ValueColumn> columns = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            int column = i;
            columns.add(new ValueColumn(
                    names.get(i), rows.stream().map(row -> row.get(column)).toList()));
        }
        return columns;
    }
}
