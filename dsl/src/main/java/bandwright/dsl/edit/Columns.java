// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.edit;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/** Puts the values of a block, and the equals signs of definitions that follow one another, into a column. */
final class Columns {
    private Columns() {}

    static void align(List<FormattedLine> lines) {
        Deque<List<FormattedLine>> blocks = new ArrayDeque<>();
        List<FormattedLine> definitions = new ArrayList<>();
        for (FormattedLine line : lines) {
            while (blocks.size() > line.depth()) {
                set(blocks.pop(), Layout.COLUMN_GAP);
            }
            while (blocks.size() < line.depth()) {
                blocks.push(new ArrayList<>());
            }
            if (line.isDefinition()) {
                definitions.add(line);
                continue;
            }
            set(definitions, 1);
            definitions = new ArrayList<>();
            if (line.isProperty()) {
                blocks.peek().add(line);
            }
        }
        set(definitions, 1);
        blocks.forEach(block -> set(block, Layout.COLUMN_GAP));
    }

    private static void set(List<FormattedLine> block, int gap) {
        int longest = block.stream().mapToInt(FormattedLine::firstLength).max().orElse(0);
        block.forEach(line -> line.setFirstWidth(longest + gap));
    }
}
