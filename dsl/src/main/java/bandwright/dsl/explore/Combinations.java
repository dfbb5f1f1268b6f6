// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.explore;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import bandwright.dsl.resolve.expression.Value;

/**
 * All combinations of some axes, numbered in the order of work: axes that change no shape move fastest, so that the bodies of one
 * shape are asked for while the workshop still remembers them.
 */
final class Combinations {
    private final List<VariedAxis> axes;
    /** Numbers of axes. */
    private final List<Integer> slowestFirst = new ArrayList<>();

    /** @param axes in the order in which they were named, of which the first moves slowest in tables */
    Combinations(List<VariedAxis> axes) {
        this.axes = List.copyOf(axes);
        for (int i = 0; i < axes.size(); i++) {
            slowestFirst.add(i);
        }
        slowestFirst.sort(Comparator.comparing((Integer i) -> !axes.get(i).changesShapes()));
    }

    long count() {
        return axes.stream().mapToLong(axis -> axis.values().size()).reduce(1, (a, b) -> a * b);
    }

    /** How many that follow one another differ in nothing that changes a shape. */
    long sharingShapes() {
        return axes.stream()
                .filter(axis -> !axis.changesShapes())
                .mapToLong(axis -> axis.values().size())
                .reduce(1, (a, b) -> a * b);
    }

    Set<String> names() {
        Set<String> names = new LinkedHashSet<>();
        axes.forEach(axis -> names.add(axis.name()));
        return names;
    }

    /** The values of a combination, by the names of the axes in their order. */
    Map<String, Value> values(long number) {
        int[] positions = positions(number);
        Map<String, Value> values = new LinkedHashMap<>();
        for (int i = 0; i < positions.length; i++) {
            values.put(axes.get(i).name(), axes.get(i).values().get(positions[i]));
        }
        return values;
    }

    /** Which row of a table a combination is, where the first axis moves slowest. */
    int row(long number) {
        int[] positions = positions(number);
        int row = 0;
        for (int i = 0; i < positions.length; i++) {
            row = row * axes.get(i).values().size() + positions[i];
        }
        return row;
    }

    /** Which value each axis has. */
    private int[] positions(long number) {
        int[] positions = new int[axes.size()];
        long left = number;
        for (int i = axes.size() - 1; i >= 0; i--) {
            int axis = slowestFirst.get(i);
            int size = axes.get(axis).values().size();
            positions[axis] = (int) (left % size);
            left /= size;
        }
        return positions;
    }
}
