// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.material;

import java.util.Set;

/** What becomes of a metal when another is poured into it; what is worse comes first. */
public enum Pouring {
    /** It scales and turns brittle, and nothing bonds with it. */
    RUINS,
    /** It melts far below where the poured metal flows. */
    MELTS_FAR_BELOW,
    /** It begins to melt before the poured metal flows. */
    MELTS,
    /** It begins to melt close above where the poured metal flows. */
    NEAR,
    /** Of a metal that no torch joins: whether the two bond is for who works it to say. */
    BOND_UNKNOWN,
    /** A melting range is not on file. */
    UNKNOWN,
    STANDS;

    /** These melt above 1500 degrees C, gold and silver alloys below 1100: from memory. */
    private static final Set<String> HOT = Set.of("platinum", "palladium");

    private static final Set<String> COOL = Set.of("gold", "silver");

    /** Poured metal is hotter than where it begins to flow by so much or more, degrees C (common practice, no source). */
    private static final double HOTTER_C = 100;

    public static Pouring of(Metal poured, Metal into) {
        Working working = Working.of(into);
        Double flows = poured.liquidusC();
        Double begins = into.solidusC();
        if (working == Working.TURNED_COLD) {
            return RUINS;
        } else if (HOT.contains(poured.family()) && COOL.contains(into.family())) {
            return MELTS_FAR_BELOW;
        } else if (flows == null || begins == null) {
            return working.isTurned() ? BOND_UNKNOWN : UNKNOWN;
        } else if (flows >= begins) {
            return MELTS;
        } else if (flows + HOTTER_C > begins) {
            return NEAR;
        }
        return working.isTurned() ? BOND_UNKNOWN : STANDS;
    }
}
