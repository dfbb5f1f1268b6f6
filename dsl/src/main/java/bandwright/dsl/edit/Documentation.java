// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import bandwright.dsl.material.Metal;
import bandwright.dsl.material.MetalCatalogue;
import bandwright.dsl.material.StoneCatalogue;
import bandwright.dsl.material.StoneMaterial;
import bandwright.dsl.parse.TextWord;
import bandwright.dsl.parse.TextWords;
import bandwright.dsl.resolve.Entry;
import bandwright.dsl.resolve.Kind;
import bandwright.dsl.resolve.Resolution;
import bandwright.dsl.resolve.profile.Form;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.source.Span;

/**
 * What the word under the cursor means: for a name its text, its present value and where it is defined; for a metal or stone
 * what the catalogue says; for a word of the language a sentence.
 *
 * @param word where the word stands
 * @param title the word, with what it is
 * @param lines further lines, plain text
 */
public record Documentation(Span word, String title, List<String> lines) {
    public Documentation {
        lines = List.copyOf(lines);
    }

    /** As plain text, a line each. */
    public String text() {
        return lines.isEmpty() ? title : title + "\n" + String.join("\n", lines);
    }

    /** @param offset the cursor, in code points; a word counts up to and with the place behind its last letter */
    public static Optional<Documentation> at(Resolution design, SourceText text, int offset) {
        return TextWords.of(text).stream()
                .filter(word ->
                        word.span().start() <= offset && offset <= word.span().end())
                .filter(word -> !word.is(TextWord.Role.LINE_END) && !word.is(TextWord.Role.COMMENT))
                // Between two words without a space the second is meant.
                .reduce((first, second) ->
                        second.is(TextWord.Role.SIGN) || second.is(TextWord.Role.BRACKET) ? first : second)
                .flatMap(word -> of(design, word));
    }

    private static Optional<Documentation> of(Resolution design, TextWord word) {
        String text = word.text();
        boolean isName = word.is(TextWord.Role.NAME) || word.is(TextWord.Role.DEFINED);
        if (isName && design.definitions().find(text).isPresent()) {
            return Optional.of(made(design, word));
        } else if (isName && MetalCatalogue.find(text).isPresent()) {
            return Optional.of(metal(word, MetalCatalogue.find(text).get()));
        } else if (isName && StoneCatalogue.find(text).isPresent()) {
            return Optional.of(stone(word, StoneCatalogue.find(text).get()));
        } else if (word.is(TextWord.Role.CALL) && Form.find(text).isPresent()) {
            List<String> lines = new ArrayList<>(WordHelp.of(text).stream().toList());
            lines.add("Sizes: " + String.join(", ", Form.find(text).get().sizes()));
            return Optional.of(new Documentation(word.span(), text + ": a form of cross-section", lines));
        }
        return WordHelp.of(text).map(sentence -> new Documentation(word.span(), text, List.of(sentence)));
    }

    private static Documentation made(Resolution design, TextWord word) {
        Entry entry = design.definitions().find(word.text()).orElseThrow();
        Kind kind = design.definitions().kind(word.text()).orElseThrow();
        List<String> lines = new ArrayList<>();
        String value = new Values(design).brief(word.text());
        String title = word.text() + (kind == Kind.DEFINITION ? " = " + value : ": " + value);
        entry.text().lines().limit(12).forEach(lines::add);
        lines.add("defined in " + entry.place().source().name() + ", line "
                + entry.place().line());
        return new Documentation(word.span(), title, lines);
    }

    private static Documentation metal(TextWord word, Metal metal) {
        List<String> lines = new ArrayList<>();
        lines.add(String.format(
                Locale.ROOT,
                "%.2f g/cm^3, %s",
                metal.densityGPerCm3(),
                metal.densityOrigin().word()));
        if (metal.fineness() != null) {
            lines.add("fineness " + metal.fineness());
        }
        metal.sources().forEach(source -> lines.add("source: " + source.text()));
        if (!metal.note().isEmpty()) {
            lines.add(metal.note());
        }
        return new Documentation(word.span(), metal.name() + ": " + metal.title(), lines);
    }

    private static Documentation stone(TextWord word, StoneMaterial stone) {
        List<String> lines = new ArrayList<>();
        lines.add(String.format(Locale.ROOT, "%.2f g/cm^3", stone.densityGPerCm3()));
        stone.sources().forEach(source -> lines.add("source: " + source.text()));
        return new Documentation(word.span(), stone.name() + ": " + stone.title(), lines);
    }
}
