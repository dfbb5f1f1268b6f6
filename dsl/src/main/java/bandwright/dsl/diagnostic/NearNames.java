// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.diagnostic;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/** Which known words a person may have meant. */
public final class NearNames {
    private static final int MOST = 3;

    private NearNames() {}

    /**
     * At most three candidates near the word, nearest first, then in alphabetical order. Near means: at most one slip
     * for each three letters, and at least one allowed; a slip is a letter too many, too few, changed, or two
     * neighbours swapped.
     */
    public static List<String> nearest(String word, Collection<String> candidates) {
        int allowed = Math.max(1, word.length() / 3);
        return candidates.stream()
                .distinct()
                .filter(candidate -> !candidate.equals(word))
                .filter(candidate -> Math.abs(candidate.length() - word.length()) <= allowed)
                .filter(candidate -> distance(word, candidate) <= allowed)
                .sorted(Comparator.<String>comparingInt(candidate -> distance(word, candidate))
                        .thenComparing(Comparator.naturalOrder()))
                .limit(MOST)
                .toList();
    }

    /**
     * The number of slips between two words, where no letter takes part in two swaps (the restricted distance of
     * F. J. Damerau, "A technique for computer detection and correction of spelling errors", 1964). Costs the product
     * of the lengths.
     */
    public static int distance(String left, String right) {
        int[][] slips = new int[left.length() + 1][right.length() + 1];
        for (int row = 0; row <= left.length(); row++) {
            for (int column = 0; column <= right.length(); column++) {
                slips[row][column] = row == 0 || column == 0 ? row + column : least(left, right, row, column, slips);
            }
        }
        return slips[left.length()][right.length()];
    }

    private static int least(String left, String right, int row, int column, int[][] slips) {
        int change = left.charAt(row - 1) == right.charAt(column - 1) ? 0 : 1;
        int least = Math.min(
                slips[row - 1][column - 1] + change, Math.min(slips[row - 1][column], slips[row][column - 1]) + 1);
        boolean swapped = row > 1
                && column > 1
                && left.charAt(row - 1) == right.charAt(column - 2)
                && left.charAt(row - 2) == right.charAt(column - 1);
        return swapped ? Math.min(least, slips[row - 2][column - 2] + 1) : least;
    }
}
