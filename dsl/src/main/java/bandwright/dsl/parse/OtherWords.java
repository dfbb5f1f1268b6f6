// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.parse;

import java.util.Map;
import java.util.Optional;

/** Words that people have for what the language calls otherwise. */
final class OtherWords {
    private static final Map<String, String> STATEMENTS = Map.ofEntries(
            Map.entry("print", "show"),
            Map.entry("display", "show"),
            Map.entry("draw", "show"),
            Map.entry("delete", "forget"),
            Map.entry("remove", "forget"),
            Map.entry("groove", "cut"),
            Map.entry("seat", "cut"),
            Map.entry("seats", "cut"),
            Map.entry("row", "stone-row"),
            Map.entry("stones", "stone-row"),
            Map.entry("claws", "prongs"),
            Map.entry("pins", "prongs"),
            Map.entry("alloy", "metal"),
            Map.entry("section", "profile"),
            Map.entry("shape", "profile"),
            Map.entry("name", "title"),
            Map.entry("assert", "require"));

    private static final Map<String, String> PROPERTIES = Map.ofEntries(
            Map.entry("material", "metal"),
            Map.entry("alloy", "metal"),
            Map.entry("size", "finger"),
            Map.entry("shape", "profile"),
            Map.entry("section", "profile"),
            Map.entry("gem", "stone"),
            Map.entry("gap", "spacing"),
            Map.entry("number", "count"),
            Map.entry("thickness", "diameter"),
            Map.entry("height", "rise"),
            Map.entry("offset", "across"));

    private OtherWords() {}

    /** The word that opens the statement which is meant by one that opens none. */
    static Optional<String> statement(String word) {
        return Optional.ofNullable(STATEMENTS.get(word));
    }

    /** The property that has another name here. */
    static Optional<String> property(String word) {
        return Optional.ofNullable(PROPERTIES.get(word));
    }
}
