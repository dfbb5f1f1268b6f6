// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view;

import java.util.ArrayList;
import java.util.List;

/**
 * A table of texts with a title, ready for plain text, a page or a spreadsheet.
 *
 * @param rows the cells, each row as long as there are columns; numbers come as text, already rounded
 * @param footnotes sentences below the table
 */
public record Table(String title, List<Column> columns, List<List<String>> rows, List<String> footnotes) {
    public Table {
        columns = List.copyOf(columns);
        rows = rows.stream().map(List::copyOf).toList();
        footnotes = List.copyOf(footnotes);
        for (List<String> row : rows) {
            if (row.size() != columns.size()) {
                throw new IllegalArgumentException("A row of " + row.size() + " in a table of " + columns.size());
            }
        }
    }

    /** On which side a column's cells line up: words left, numbers right. */
    public enum Alignment {
        LEFT,
        RIGHT
    }

    /**
     * @param unit the unit of all its cells, or empty text
     */
    public record Column(String name, String unit, Alignment alignment) {
        /** A column of words. */
        public static Column words(String name) {
            return new Column(name, "", Alignment.LEFT);
        }

        /** A column of numbers in a unit, which may be empty text. */
        public static Column numbers(String name, String unit) {
            return new Column(name, unit, Alignment.RIGHT);
        }

        /** The name, and the unit in brackets if there is one. */
        public String heading() {
            return unit.isEmpty() ? name : name + " (" + unit + ")";
        }
    }

    /** Columns lined up by spaces, a rule below the headings. */
    public String plainText() {
        int[] widths = widths();
        StringBuilder text = new StringBuilder();
        if (!title.isEmpty()) {
            text.append(title).append("\n\n");
        }
        appendLine(text, headings(), widths);
        List<String> rules = new ArrayList<>();
        for (int width : widths) {
            rules.add("-".repeat(width));
        }
        appendLine(text, rules, widths);
        rows.forEach(row -> appendLine(text, row, widths));
        if (!footnotes.isEmpty()) {
            text.append('\n');
            footnotes.forEach(note -> text.append(note).append('\n'));
        }
        return text.toString();
    }

    /** A table element with caption, headings with scope, no style and no script. */
    public String html() {
        StringBuilder text = new StringBuilder("<table>\n");
        if (!title.isEmpty()) {
            text.append("<caption>").append(escaped(title)).append("</caption>\n");
        }
        text.append("<thead>\n<tr>");
        for (Column column : columns) {
            text.append("<th scope=\"col\"").append(align(column)).append('>');
            text.append(escaped(column.heading())).append("</th>");
        }
        text.append("</tr>\n</thead>\n<tbody>\n");
        for (List<String> row : rows) {
            text.append("<tr>");
            for (int i = 0; i < row.size(); i++) {
                // The first cell names the row, so a screen reader says it with each figure.
                String tag = i == 0 ? "th" : "td";
                text.append('<').append(tag).append(i == 0 ? " scope=\"row\"" : "");
                text.append(align(columns.get(i))).append('>');
                text.append(escaped(row.get(i))).append("</").append(tag).append('>');
            }
            text.append("</tr>\n");
        }
        text.append("</tbody>\n");
        if (!footnotes.isEmpty()) {
            text.append("<tfoot>\n");
            for (String note : footnotes) {
                text.append("<tr><td colspan=\"").append(columns.size()).append("\" align=\"left\">");
                text.append(escaped(note)).append("</td></tr>\n");
            }
            text.append("</tfoot>\n");
        }
        return text.append("</table>\n").toString();
    }

    /** Headings and rows as RFC 4180 has them, but with plain line feeds; title and footnotes are left out. */
    public String csv() {
        StringBuilder text = new StringBuilder(csvLine(headings()));
        rows.forEach(row -> text.append(csvLine(row)));
        return text.toString();
    }

    /** One row as {@link #csv} has it, with its line feed. */
    public static String csvLine(List<String> cells) {
        StringBuilder text = new StringBuilder();
        appendCsv(text, cells);
        return text.toString();
    }

    private List<String> headings() {
        return columns.stream().map(Column::heading).toList();
    }

    private int[] widths() {
        int[] widths = new int[columns.size()];
        for (int i = 0; i < widths.length; i++) {
            widths[i] = Math.max(1, length(columns.get(i).heading()));
            for (List<String> row : rows) {
                widths[i] = Math.max(widths[i], length(row.get(i)));
            }
        }
        return widths;
    }

    private void appendLine(StringBuilder text, List<String> cells, int[] widths) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < widths.length; i++) {
            String padding = " ".repeat(widths[i] - length(cells.get(i)));
            boolean right = columns.get(i).alignment() == Alignment.RIGHT;
            line.append(i == 0 ? "" : "  ");
            line.append(right ? padding + cells.get(i) : cells.get(i) + padding);
        }
        text.append(line.toString().stripTrailing()).append('\n');
    }

    private static int length(String cell) {
        return cell.codePointCount(0, cell.length());
    }

    private static String align(Column column) {
        return column.alignment() == Alignment.RIGHT ? " align=\"right\"" : " align=\"left\"";
    }

    private static void appendCsv(StringBuilder text, List<String> cells) {
        for (int i = 0; i < cells.size(); i++) {
            String cell = cells.get(i);
            boolean quoted = cell.chars().anyMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
            text.append(i == 0 ? "" : ",").append(quoted ? '"' + cell.replace("\"", "\"\"") + '"' : cell);
        }
        text.append('\n');
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
