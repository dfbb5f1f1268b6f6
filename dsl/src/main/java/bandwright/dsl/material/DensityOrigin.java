// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.material;

/** How a metal's density is known. */
public enum DensityOrigin {
    PUBLISHED("published"),
    /** Computed from the recipe by {@link MixingRule}. */
    MIXING_RULE("mixing rule"),
    /** Worked out from another published figure, such as a wax multiplier. */
    DERIVED("derived"),
    /** Published for a metal of this colour and fineness whose recipe may differ. */
    OTHER_RECIPE("published (other recipe of this colour)"),
    FROM_MEMORY("from memory"),
    /** Written in the design by its author. */
    GIVEN("given");

    private final String word;

    DensityOrigin(String word) {
        this.word = word;
    }

    /** In words, as the data file has it. */
    public String word() {
        return word;
    }

    static DensityOrigin of(String text) {
        for (DensityOrigin origin : values()) {
            if (text.equals(origin.word)) {
                return origin;
            }
        }
        // "mixing rule (published value rejected)": the note of the metal says which value and why.
        if (text.startsWith(MIXING_RULE.word)) {
            return MIXING_RULE;
        }
        throw new IllegalStateException("no origin of a density: " + text);
    }
}
