// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.export.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Lays out a line of a text whose spaces mean something in a typeface whose letters differ in width. What stands behind two spaces or
 * more starts at a place that its column alone decides, so that columns line up over several lines.
 *
 * @param size of the letters, mm
 * @param width the line's room, mm
 */
record CodeLine(Letters letters, double size, double width) {
    /** The room for a sign, as a share of the size: a little more than letters take on average. */
    private static final double STEP = 0.52;

    private static final Pattern APART = Pattern.compile(" {2,}|\\t+");
    private static final int TAB = 4;

    /** @param left of its start, mm from the line's */
    record Run(String text, double left) {}

    /** The line's words on one row, or on more where it is too long for one. */
    List<List<Run>> rows(String line) {
        List<List<Run>> rows = new ArrayList<>(List.of(new ArrayList<>()));
        double indent = 0;
        double at = 0;
        int column = 0;
        boolean opens = true;
        for (String piece : pieces(line)) {
            if (APART.matcher(piece).matches()) {
                column += piece.startsWith("\t") ? TAB * piece.length() : piece.length();
                at = Math.max(at + 0.6 * size, column * STEP * size);
                indent = opens ? at : indent;
                continue;
            }
            opens = false;
            double wide = letters.width(letters.settable(piece), size);
            if (at + wide > width && at > indent) {
                rows.add(new ArrayList<>());
                at = Math.min(indent + 2 * STEP * size, width / 2);
            }
            double left = at + wide <= width ? at : Math.min(at, width / 2);
            List<String> lines = letters.lines(piece, size, width - left);
            rows.get(rows.size() - 1).add(new Run(lines.get(0), left));
            lines.subList(1, lines.size()).forEach(more -> rows.add(new ArrayList<>(List.of(new Run(more, left)))));
            at = left + letters.width(lines.get(lines.size() - 1), size);
            column += piece.length();
        }
        return rows;
    }

    /** Words and what sets them apart, in turn. */
    private static List<String> pieces(String line) {
        List<String> pieces = new ArrayList<>();
        Matcher apart = APART.matcher(line);
        int done = 0;
        while (apart.find()) {
            if (apart.start() > done) {
                pieces.add(line.substring(done, apart.start()));
            }
            pieces.add(apart.group());
            done = apart.end();
        }
        if (done < line.length()) {
            pieces.add(line.substring(done));
        }
        return pieces;
    }
}
