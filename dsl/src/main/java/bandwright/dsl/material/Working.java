// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.material;

/**
 * How a workshop works a metal. Common practice, no source: who works a metal every day knows better.
 */
public enum Working {
    /** Cast, bent and soldered at the torch, pickled: gold, silver, and what is mostly copper. */
    TORCH,
    /** Platinum and palladium: hotter, clean, with solders of their own or welded; neither flux nor pickle are of use. */
    HOT,
    /** Steel and cobalt alloys: turned from bar or tube; solder wants a flux of its own, so they are pressed or welded. */
    TURNED,
    /** Titanium and tantalum: turned from bar or tube; no torch, no solder. */
    TURNED_COLD,
    /** A user's metal by density alone, or of none of these. */
    UNKNOWN;

    public static Working of(Metal metal) {
        return switch (metal.family()) {
            case "gold", "silver", "copper" -> TORCH;
            case "platinum", "palladium" -> HOT;
            case "steel", "cobalt" -> TURNED;
            case "titanium", "tantalum" -> TURNED_COLD;
            default -> UNKNOWN;
        };
    }

    /** Whether it is turned or milled from bar or tube, for a common workshop neither casts nor bends it. */
    public boolean isTurned() {
        return this == TURNED || this == TURNED_COLD;
    }
}
