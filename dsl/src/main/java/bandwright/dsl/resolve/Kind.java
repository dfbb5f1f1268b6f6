// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.resolve;

/** What a name can be the name of. */
public enum Kind {
    DEFINITION("a definition"),
    PROFILE("a profile"),
    BAND("a band"),
    GROOVE("a cut"),
    KEPT_PART("a kept part"),
    COLLAR("a collar"),
    PIECE("a piece"),
    SEATS("a cut for stones"),
    STONE_ROW("a row of stones"),
    PRONGS("prongs"),
    METAL("a metal"),
    STONE_MATERIAL("a stone material"),
    OPTION("an option");

    private final String words;

    Kind(String words) {
        this.words = words;
    }

    /** As people call it, with an article. */
    public String words() {
        return words;
    }

    /** Whether it is a body of metal. */
    public boolean isPart() {
        return this == BAND || this == KEPT_PART || this == COLLAR || this == PIECE;
    }
}
