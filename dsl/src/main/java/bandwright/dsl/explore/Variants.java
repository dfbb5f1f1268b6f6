// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.explore;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

import bandwright.dsl.construct.Workshop;
import bandwright.dsl.resolve.expression.Value;
import bandwright.dsl.source.Place;

/**
 * All combinations of some axes, worked out.
 *
 * @param axes the first moves slowest
 * @param rows one for each combination
 */
record Variants(Question question, List<VariedAxis> axes, List<Variant> rows) {
    Variants {
        axes = List.copyOf(axes);
        rows = List.copyOf(rows);
    }

    /** @param place of the statement that asks */
    static Variants work(Question question, List<VariedAxis> axes, Workshop workshop, Heard heard, Place place) {
        Combinations combinations = new Combinations(axes);
        VariantWorker worker = new VariantWorker(question, workshop, combinations.names());
        int count = (int) combinations.count();
        List<Variant> worked = SideBySide.work(count, number -> worker.work(combinations.values(number)), heard, place);
        worker.refuseHopeless(worked);
        Variant[] rows = new Variant[count];
        for (int i = 0; i < count; i++) {
            rows[combinations.row(i)] = worked.get(i);
        }
        return new Variants(question, axes, List.of(rows));
    }

    /** The values of a row by the names of the axes. */
    private static Map<String, Value> values(List<VariedAxis> axes, int row) {
        Map<String, Value> values = new LinkedHashMap<>();
        int stride = axes.stream().mapToInt(axis -> axis.values().size()).reduce(1, (a, b) -> a * b);
        for (VariedAxis axis : axes) {
            int size = axis.values().size();
            stride /= size;
            values.put(axis.name(), axis.values().get(row / stride % size));
        }
        return values;
    }

    /** The values of a row in the order of the axes. */
    private List<Optional<Value>> values(int row) {
        return values(axes, row).values().stream().map(Optional::of).toList();
    }

    /** A column for each axis. */
    List<ValueColumn> axisColumns() {
        List<List<Optional<Value>>> values =
                IntStream.range(0, rows.size()).mapToObj(this::values).toList();
        List<ValueColumn> columns = new ArrayList<>();
        for (int i = 0; i < axes.size(); i++) {
            int axis = i;
            columns.add(ValueColumn.of(
                    axes.get(i), values.stream().map(row -> row.get(axis)).toList()));
        }
        return columns;
    }

    /** A column for each thing that was asked. */
    List<ValueColumn> itemColumns() {
        List<String> labels =
                question.items().stream().map(Question.Item::label).toList();
        return ValueColumn.across(labels, rows.stream().map(Variant::values).toList());
    }

    List<String> axisNames() {
        return axes.stream().map(VariedAxis::name).toList();
    }
}
