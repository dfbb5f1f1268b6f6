// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.parse;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.diagnostic.HtmlRenderer;
import bandwright.dsl.diagnostic.PlainRenderer;
import bandwright.dsl.golden.GoldenFiles;
import bandwright.dsl.source.Place;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.syntax.Printer;
import bandwright.dsl.syntax.TreeText;

import static org.assertj.core.api.Assertions.assertThat;

/** Whatever becomes of a text, reading it ends well. */
class MutationTest {
    private static final int MUTATIONS = System.getenv("BANDWRIGHT_LONG_TESTS") == null ? 50_000 : 500_000;
    private static final Pattern WORD = Pattern.compile("[\\p{L}0-9-]+|\\s+|.", Pattern.DOTALL);
    private static final Pattern CHARACTER = Pattern.compile("(?s:.)");

    @Test
    void no_change_of_a_text_makes_reading_fail() {
        List<String> texts = Stream.of("parse", "errors")
                .flatMap(area -> GoldenFiles.cases(area).stream())
                .map(GoldenFiles.Case::text)
                .toList();
        Random random = new Random(57);
        for (int round = 0; round < MUTATIONS; round++) {
            String text = texts.get(random.nextInt(texts.size()));
            Pattern piece = round % 2 == 0 ? WORD : CHARACTER;
            check(mutate(text, piece, random));
        }
    }

    private static String mutate(String text, Pattern piece, Random random) {
        List<String> pieces = new ArrayList<>(
                piece.matcher(text).results().map(MatchResult::group).toList());
        for (int change = random.nextInt(3); change >= 0 && pieces.size() > 1; change--) {
            int at = random.nextInt(pieces.size());
            switch (random.nextInt(3)) {
                case 0 -> pieces.remove(at);
                case 1 -> pieces.add(random.nextInt(pieces.size()), pieces.get(at));
                default -> Collections.swap(pieces, at, random.nextInt(pieces.size()));
            }
        }
        return String.join("", pieces);
    }

    private static void check(String text) {
        SourceText source = new SourceText("cell 1", text);
        ParseResult result;
        try {
            result = RingParser.parse(source);
            PlainRenderer.render(result.diagnostics());
            HtmlRenderer.render(result.diagnostics());
        } catch (RuntimeException | StackOverflowError failure) {
            throw new AssertionError(text, failure);
        }
        for (Diagnostic diagnostic : result.diagnostics()) {
            Place place = diagnostic.place();
            assertThat(place).as(text).isNotNull();
            assertThat(place.span().end()).as(text).isLessThanOrEqualTo(source.length());
        }
        if (!result.hasErrors()) {
            String printed = Printer.print(result.cell());
            ParseResult again = RingParser.parse(new SourceText("printed", printed));
            assertThat(TreeText.of(again.cell())).as(text).isEqualTo(TreeText.of(result.cell()));
        }
    }
}
