// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.mark;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import bandwright.dsl.view.Table;
import bandwright.kernel.display.Decimals;

/** All marks as one table for a spreadsheet: a row for each work, a column for each line of the key. A work that was not marked has none: not 0. */
public final class MarkTable {
    private MarkTable() {}

    /** @param works by their names */
    public static Table of(Key key, Map<String, Marked> works) {
        List<Table.Column> columns = new ArrayList<>(List.of(
                Table.Column.words("file"),
                Table.Column.words("outcome"),
                Table.Column.numbers("points", ""),
                Table.Column.numbers("of", ""),
                Table.Column.numbers("own passed", ""),
                Table.Column.numbers("own failed", ""),
                Table.Column.numbers("cells with errors", ""),
                Table.Column.numbers("cells in Java, not run", "")));
        for (int i = 0; i < key.lines().size(); i++) {
            columns.add(Table.Column.numbers((i + 1) + ": " + key.lines().get(i).words(), ""));
        }
        List<List<String>> rows = new ArrayList<>();
        works.forEach((name, marked) -> rows.add(row(key, name, marked)));
        return new Table("Marks", columns, rows, List.of());
    }

    private static List<String> row(Key key, String name, Marked marked) {
        long passed = marked.ownPassed();
        List<String> row = new ArrayList<>(List.of(
                harmless(name),
                marked.wasMarked() ? "marked" : harmless(marked.failure()),
                marked.wasMarked() ? number(marked.points(key)) : "",
                number(key.points()),
                Long.toString(passed),
                Long.toString(marked.own().size() - passed),
                Integer.toString(marked.errors()),
                Integer.toString(marked.javaCells())));
        for (int i = 0; i < key.lines().size(); i++) {
            row.add(marked.wasMarked() ? number(marked.points(key, i)) : "");
        }
        return row;
    }

    /** A spreadsheet takes a cell that begins with one of these signs for a formula, and runs it. */
    private static String harmless(String text) {
        return !text.isEmpty() && "=+-@".indexOf(text.charAt(0)) >= 0 ? "./" + text : text;
    }

    private static String number(double points) {
        return Decimals.plain(points, 3);
    }
}
