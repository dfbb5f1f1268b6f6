// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.edit;

import java.util.List;
import java.util.Locale;

import bandwright.dsl.parse.TextWord;
import bandwright.dsl.parse.TextWords;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.source.Span;

/** Which word of a text is what, for colours. */
public final class Highlighting {
    /** @param role {@code statement}, {@code word}, {@code defined}, {@code name}, {@code call}, {@code number} and so on */
    public record Marked(Span span, String role) {}

    private Highlighting() {}

    /** All words but line ends, in order. */
    public static List<Marked> of(SourceText text) {
        return TextWords.of(text).stream()
                .filter(word -> !word.is(TextWord.Role.LINE_END))
                .map(word -> new Marked(word.span(), word.role().name().toLowerCase(Locale.ROOT)))
                .toList();
    }
}
