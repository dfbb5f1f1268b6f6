// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.cell.java;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;

import org.jspecify.annotations.Nullable;

import bandwright.design.Quantity;
import bandwright.design.Shown;
import bandwright.dsl.Answer;
import bandwright.dsl.Charts;
import bandwright.dsl.view.Chart;
import bandwright.dsl.view.Picture;
import bandwright.dsl.view.Table;

/** How a value of a cell is shown. */
final class ValueAnswers {
    /** Nobody reads more rows. */
    private static final int MOST_ROWS = 1000;

    private ValueAnswers() {}

    static List<Answer> of(@Nullable Object value) {
        if (value instanceof Shown shown) {
            return shown.answers();
        } else if (value instanceof Answer answer) {
            return List.of(answer);
        } else if (value instanceof Chart chart) {
            return List.of(Charts.drawn(chart));
        } else if (value instanceof Table table) {
            return List.of(new Answer.Tabled(table));
        } else if (value instanceof Picture picture) {
            return List.of(new Answer.Pictured(picture));
        } else if (value instanceof Record record) {
            return List.of(records(List.of(record)));
        } else if (value instanceof Map<?, ?> map && !map.isEmpty()) {
            return List.of(map(map));
        } else if (value instanceof Collection<?> all && areRecords(all)) {
            return List.of(records(List.copyOf(all)));
        } else if (value instanceof Object[] all && areRecords(Arrays.asList(all))) {
            return List.of(records(Arrays.asList(all)));
        } else if (value instanceof Object[] all) {
            return List.of(new Answer.Words("", Arrays.deepToString(all)));
        }
        return List.of(new Answer.Words("", text(value)));
    }

    private static String text(@Nullable Object value) {
        String text = String.valueOf(value);
        return text == null ? "" : text;
    }

    private static boolean areRecords(Collection<?> all) {
        return !all.isEmpty()
                && all.stream().allMatch(Record.class::isInstance)
                && all.stream().map(Object::getClass).distinct().count() == 1;
    }

    private static Answer records(List<?> records) {
        RecordComponent[] components = records.get(0).getClass().getRecordComponents();
        List<String> names = new ArrayList<>();
        for (RecordComponent component : components) {
            names.add(component.getName());
        }
        List<List<@Nullable Object>> rows = new ArrayList<>();
        for (Object record : records.subList(0, Math.min(records.size(), MOST_ROWS))) {
            List<@Nullable Object> row = new ArrayList<>();
            for (RecordComponent component : components) {
                row.add(read(component, record));
            }
            rows.add(row);
        }
        return table(names, rows, records.size());
    }

    private static @Nullable Object read(RecordComponent component, Object record) {
        try {
            component.getAccessor().setAccessible(true);
            return component.getAccessor().invoke(record);
        } catch (ReflectiveOperationException failure) {
            throw new IllegalStateException("cannot read " + component, failure);
        }
    }

    private static Answer map(Map<?, ?> map) {
        List<List<@Nullable Object>> rows = new ArrayList<>();
        for (Map.Entry<?, ?> entry : map.entrySet()) {
            if (rows.size() < MOST_ROWS) {
                rows.add(Arrays.<@Nullable Object>asList(entry.getKey(), entry.getValue()));
            }
        }
        return table(List.of("key", "value"), rows, map.size());
    }

    private static Answer table(List<String> names, List<List<@Nullable Object>> rows, int total) {
        List<Table.Column> columns = new ArrayList<>();
        List<List<String>> texts = new ArrayList<>();
        rows.forEach(row -> texts.add(new ArrayList<>()));
        for (int i = 0; i < names.size(); i++) {
            int at = i;
            List<@Nullable Object> cells = new ArrayList<>();
            rows.forEach(row -> cells.add(row.get(at)));
            String unit = commonUnit(cells);
            boolean numbers = !unit.isEmpty()
                    || cells.stream().allMatch(cell -> cell instanceof Number || cell instanceof Quantity);
            columns.add(numbers ? Table.Column.numbers(names.get(i), unit) : Table.Column.words(names.get(i)));
            for (int row = 0; row < rows.size(); row++) {
                String text = text(cells.get(row));
                boolean cut = !unit.isEmpty() && text.endsWith(" " + unit);
                texts.get(row).add(cut ? text.substring(0, text.length() - unit.length() - 1) : text);
            }
        }
        List<String> notes = rows.size() < total ? List.of("the first " + rows.size() + " of " + total) : List.of();
        return new Answer.Tabled(new Table("", columns, texts, notes));
    }

    /** The unit that all have; empty if there is none. */
    private static String commonUnit(List<@Nullable Object> cells) {
        List<String> units = cells.stream()
                .map(cell -> cell instanceof Quantity quantity ? quantity.unit() : "")
                .distinct()
                .toList();
        return units.size() == 1 ? units.get(0) : "";
    }
}
