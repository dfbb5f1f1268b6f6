// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Puts dimension lines into rows beside a section, so that no two of them, nor their labels, touch. Short ones come first and so
 * lie nearest; each goes into the first row where it and its label have room.
 */
final class DimensionRows {
    private DimensionRows() {}

    /** What one dimension needs of its row: from where to where, label included. */
    record Span(double low, double high) {
        double length() {
            return high - low;
        }
    }

    /** The row of each span, 0 nearest, in the given order. */
    static List<Integer> place(List<Span> spans, double gapMm) {
        List<Integer> order = new ArrayList<>();
        List<Integer> rows = new ArrayList<>();
        for (int i = 0; i < spans.size(); i++) {
            order.add(i);
            rows.add(0);
        }
        order.sort(
                Comparator.comparingDouble((Integer i) -> spans.get(i).length()).thenComparing(i -> i));
        List<List<Span>> taken = new ArrayList<>();
        for (int index : order) {
            Span span = spans.get(index);
            int row = 0;
            while (row < taken.size() && !isFree(taken.get(row), span, gapMm)) {
                row++;
            }
            if (row == taken.size()) {
                taken.add(new ArrayList<>());
            }
            taken.get(row).add(span);
            rows.set(index, row);
        }
        return rows;
    }

    private static boolean isFree(List<Span> row, Span span, double gapMm) {
        return row.stream().allMatch(other -> other.high() + gapMm < span.low() || span.high() + gapMm < other.low());
    }
}
