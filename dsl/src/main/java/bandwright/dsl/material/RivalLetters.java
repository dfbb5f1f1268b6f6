// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.material;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Letters for finger sizes by tables that contradict BS 6820 ({@code rival_letters.csv}): a casting house's, older gauges'
 * and an old chart's, of which only parts were read. For warnings, not for sizing: none of them is used for a letter of the
 * language.
 *
 * @param source whose table it is
 * @param letter what that table calls the size nearest to the one asked for
 * @param circumferenceMm inner circumference of that letter in that table, mm
 */
public record RivalLetters(MaterialSource source, String letter, double circumferenceMm) {
    /** Half of a letter's step: a table whose nearest row is further off does not reach the size. */
    private static final double REACH_MM = 0.75;

    /** What each table that reaches a size calls it, always in the same order. */
    public static List<RivalLetters> near(double circumferenceMm) {
        Map<String, RivalLetters> nearest = new LinkedHashMap<>();
        for (RivalLetters row : Loaded.ALL) {
            double off = Math.abs(row.circumferenceMm - circumferenceMm);
            RivalLetters best = nearest.get(row.source.id());
            if (off <= REACH_MM && (best == null || off < Math.abs(best.circumferenceMm - circumferenceMm))) {
                nearest.put(row.source.id(), row);
            }
        }
        return List.copyOf(nearest.values());
    }

    private static final class Loaded {
        static final List<RivalLetters> ALL = read();

        private static List<RivalLetters> read() {
            List<RivalLetters> rows = new ArrayList<>();
            for (DataTable.Row row : DataTable.read("rival_letters.csv")) {
                rows.add(new RivalLetters(
                        MaterialSource.of(row.text("source_id"), row.text("how"))
                                .get(0),
                        row.text("letter"),
                        row.number("circumference_mm")));
            }
            return List.copyOf(rows);
        }
    }
}
