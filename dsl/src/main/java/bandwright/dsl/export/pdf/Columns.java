// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.export.pdf;

import java.util.List;

import bandwright.dsl.view.Table;

/** How wide a table's columns are: as their texts want it, or, where that is wider than the paper, the wordy ones narrower. */
final class Columns {
    /** Between two columns, mm. */
    static final double GAP = 3;

    /** Texts of so few signs stay on a line: sizes, figures with their unit. */
    private static final int UNBROKEN = 12;

    /** A word longer than this, mm, is broken rather than take the room of the other columns. */
    private static final double LONG_WORD = 40;

    private Columns() {}

    /** Widths in mm of the texts in each column; with the gaps between no more than {@code width}. */
    static double[] widths(Table table, Letters letters, double size, double width) {
        int count = table.columns().size();
        double[] natural = new double[count];
        double[] least = new double[count];
        for (int i = 0; i < count; i++) {
            widen(natural, least, i, table.columns().get(i).heading(), false, letters, size);
            // A figure that is broken reads as two.
            boolean figures = table.columns().get(i).alignment() == Table.Alignment.RIGHT;
            for (List<String> row : table.rows()) {
                widen(natural, least, i, row.get(i), figures, letters, size);
            }
        }
        double room = width - GAP * (count - 1);
        double wanted = sum(natural);
        if (wanted <= room) {
            return natural;
        }
        double needed = sum(least);
        double[] widths = new double[count];
        for (int i = 0; i < count; i++) {
            widths[i] = needed >= room
                    // Words break then.
                    ? least[i] * room / needed
                    : least[i] + (room - needed) * (natural[i] - least[i]) / (wanted - needed);
        }
        return widths;
    }

    private static void widen(
            double[] natural, double[] least, int column, String text, boolean whole, Letters letters, double size) {
        natural[column] = Math.max(natural[column], letters.width(letters.settable(text), size) + 0.01);
        boolean kept = whole || text.codePointCount(0, text.length()) <= UNBROKEN;
        double narrow = kept ? letters.width(letters.settable(text), size) : letters.longestWord(text, size);
        least[column] = Math.max(least[column], Math.min(narrow + 0.01, LONG_WORD));
    }

    private static double sum(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum;
    }
}
