// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.parse;

import java.util.Map;

/** What people paste, in its plain spelling. */
final class Spelling {
    private static final Map<Integer, String> PLAIN = Map.ofEntries(
            Map.entry((int) '½', " 1/2"),
            Map.entry((int) '¼', " 1/4"),
            Map.entry((int) '¾', " 3/4"),
            Map.entry((int) '×', "*"),
            Map.entry((int) '−', "-"),
            Map.entry((int) '≤', "<="),
            Map.entry((int) '≥', ">="),
            Map.entry((int) '≠', "<>"),
            Map.entry((int) '°', "deg"),
            Map.entry((int) '²', "^2"),
            Map.entry((int) '³', "^3"),
            Map.entry((int) 'µ', "u"),
            Map.entry((int) 'μ', "u"));

    private Spelling() {}

    /** Plain signs, and single plain spaces. For numbers, units and operators; names and texts stay as they are. */
    static String plain(String text) {
        StringBuilder plain = new StringBuilder();
        boolean space = false;
        for (int point : text.codePoints().toArray()) {
            String spelled = PLAIN.get(point);
            if (spelled != null) {
                plain.append(spelled);
            } else if (Character.isSpaceChar(point) || Character.isWhitespace(point) || point == 0xFEFF) {
                space = true;
                continue;
            } else {
                plain.append(space ? " " : "").appendCodePoint(point);
            }
            space = false;
        }
        return plain.toString().strip();
    }
}
