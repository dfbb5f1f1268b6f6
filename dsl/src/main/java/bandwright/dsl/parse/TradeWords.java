// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.parse;

import java.util.Map;
import java.util.Optional;

/** Words of the trade that the language does not have, and what it has for them, or that it has nothing yet. */
public final class TradeWords {
    private static final String NOT_YET = "There is nothing for it yet.";

    private static final String ENGRAVING =
            "Letters are not made yet; the room for them inside the ring stands on the sheet: sheet \"ring.pdf\".";

    private static final Map<String, String> WORDS = Map.ofEntries(
            Map.entry(
                    "pave",
                    "Write a stone-row with several offsets, such as across -1 mm, 1 mm, and staggered; then prongs for it."),
            Map.entry("eternity", "Write a stone-row with around full."),
            Map.entry("bezel", "There is nothing for it yet: stones are held by prongs or in a channel."),
            Map.entry("halo", NOT_YET),
            Map.entry("solitaire", NOT_YET),
            Map.entry("gallery", NOT_YET),
            Map.entry("milgrain", NOT_YET),
            Map.entry("hammer", NOT_YET),
            Map.entry("filigree", NOT_YET),
            Map.entry("hallmark", NOT_YET),
            Map.entry("resize", "Give the finger size another value; what-if and vary set sizes side by side."),
            Map.entry("polish", "Write stock in the braces of an export: what is left for filing and polishing."),
            Map.entry("inlay", "Write keep, a name, in and a metal, in the braces of a cut."),
            Map.entry("solder", "Write joined by solder in the braces of a cut."),
            Map.entry("weigh", "Write show weights, or weight(…) of a part."),
            Map.entry("engrave", ENGRAVING),
            Map.entry("engraving", ENGRAVING));

    private TradeWords() {}

    /** A sentence about it; nothing for a word that is not among them. */
    public static Optional<String> here(String word) {
        return Optional.ofNullable(WORDS.get(word.replace('\u00e9', 'e')));
    }
}
