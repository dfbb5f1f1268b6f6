// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.explore;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
        Set<String> names = new LinkedHashSet<>();
        axes.forEach(axis -> names.add(axis.name()));
        VariantWorker worker = new VariantWorker(question, workshop, names);
        int count = axes.stream().mapToInt(axis -> axis.values().size()).reduce(1, (a, b) -> a * b);
        int[] order = order(axes, count);
        List<Variant> worked = SideBySide.work(count, number -> worker.work(values(axes, order[number])), heard, place);
        worker.refuseHopeless(worked);
        Variant[] rows = new Variant[count];
        for (int i = 0; i < count; i++) {
            rows[order[i]] = worked.get(i);
        }
        return new Variants(question, axes, List.of(rows));
    }

    /**
     * The order of work. Axes that change no shape move fastest, so that the bodies of one shape are asked for while the workshop
     * still remembers them.
     */
    private static int[] order(List<VariedAxis> axes, int count) {
        int[] strides = new int[axes.size()];
        int stride = 1;
        for (int i = axes.size() - 1; i >= 0; i--) {
            strides[i] = stride;
            stride *= axes.get(i).values().size();
        }
        List<Integer> slowestFirst = new ArrayList<>();
        for (int i = 0; i < axes.size(); i++) {
            slowestFirst.add(i);
        }
        slowestFirst.sort(Comparator.comparing((Integer i) -> !axes.get(i).changesShapes()));
        int[] order = new int[count];
        for (int number = 0; number < count; number++) {
            int left = number;
            for (int i = axes.size() - 1; i >= 0; i--) {
                int axis = slowestFirst.get(i);
                int size = axes.get(axis).values().size();
                order[number] += left % size * strides[axis];
                left /= size;
            }
        }
        return order;
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
