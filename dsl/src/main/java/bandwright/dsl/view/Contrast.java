// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Two designs compared, figure by figure.
 *
 * @param left what the first is called, and {@code right} the second
 * @param lines in the order of their groups
 */
public record Contrast(String left, String right, List<Line> lines) {
    public Contrast {
        lines = List.copyOf(lines);
    }

    /** What a line is about. */
    public enum Group {
        DEFINITIONS("Definitions"),
        STATEMENTS("What is made"),
        MEASURES("Measures"),
        REQUIREMENTS("Requirements"),
        CHECKS("Checks");

        private final String title;

        Group(String title) {
            this.title = title;
        }

        /** For people. */
        public String title() {
            return title;
        }

        /** For machines: {@code definitions}. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * One figure of both.
     *
     * @param left as the language shows it, with its unit; empty text where the first has none, and {@code right} likewise
     * @param difference {@code same}, how much more the second is, {@code differs} where that is no number, or who alone has it
     * @param percent the share of the first; empty text where there is none
     */
    public record Line(
            Group group, String name, String left, String right, String difference, String percent, boolean same) {}

    /** Whether nothing differs, to the digits that are shown. */
    public boolean same() {
        return lines.stream().allMatch(Line::same);
    }

    /** A table for each group that has lines. */
    public List<Table> tables() {
        return Arrays.stream(Group.values())
                .map(this::table)
                .filter(table -> !table.rows().isEmpty())
                .toList();
    }

    /** How many lines differ, in words. */
    public String summary() {
        long differing = lines.stream().filter(line -> !line.same()).count();
        return differing == 0
                ? "no difference in " + lines.size() + " lines"
                : differing + " of " + lines.size() + (differing == 1 ? " lines differs" : " lines differ");
    }

    /** All lines as one table, for a spreadsheet. */
    public Table inOneTable() {
        List<Table.Column> columns = new ArrayList<>(List.of(Table.Column.words("group")));
        columns.addAll(columns());
        List<List<String>> rows = new ArrayList<>();
        for (Line line : lines) {
            List<String> row = new ArrayList<>(List.of(line.group().word()));
            row.addAll(cells(line));
            rows.add(row);
        }
        return new Table("", columns, rows, List.of());
    }

    private Table table(Group group) {
        List<List<String>> rows = lines.stream()
                .filter(line -> line.group() == group)
                .map(Contrast::cells)
                .toList();
        return new Table(group.title(), columns(), rows, List.of());
    }

    private List<Table.Column> columns() {
        return List.of(
                Table.Column.words("what"),
                Table.Column.numbers(left, ""),
                Table.Column.numbers(right, ""),
                Table.Column.numbers("difference", ""),
                Table.Column.numbers("per cent", ""));
    }

    private static List<String> cells(Line line) {
        return List.of(line.name(), line.left(), line.right(), line.difference(), line.percent());
    }
}
