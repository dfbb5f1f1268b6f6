// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.golden.GoldenFiles;
import bandwright.dsl.source.Place;
import bandwright.dsl.source.SourceText;

import static org.assertj.core.api.Assertions.assertThat;

/** Whatever becomes of a text that makes a ring and asks about it, running it ends well. */
class WorkbenchMutationTest {
    private static final int TEXTS = System.getenv("BANDWRIGHT_LONG_TESTS") == null ? 1_500 : 30_000;

    private static final Pattern WORD = Pattern.compile("[\\p{L}0-9.-]+|\\s+|.", Pattern.DOTALL);
    private static final Pattern LINE = Pattern.compile("[^\n]*\n?");

    /** What takes long for what it tries here. */
    private static final Pattern PICTURES = Pattern.compile("(?m)^\\s*(show|view|vary|find|option).*$");

    private static final String ASKED =
            "\nweight(ring)\nweight(shank, pattern)\nexplain weight(ring)\nexplain gap(lights)"
                    + "\nshow weights\nshow stones\nshow blank\nshow size\nquote { metal 5 EUR/g }\n";

    @Test
    void no_change_of_a_text_makes_running_it_fail() {
        List<String> texts = Stream.of("workbench", "explain", "resolve")
                .flatMap(area -> GoldenFiles.cases(area).stream())
                .map(input -> PICTURES.matcher(input.text()).replaceAll(""))
                .filter(text -> text.length() < 2_000)
                .toList();
        IntStream.range(0, TEXTS).parallel().forEach(number -> {
            Random random = new Random(number);
            String text = number % 3 == 0
                    ? String.join("\n", RandomProgram.statements(random))
                    : texts.get(random.nextInt(texts.size()));
            check(mutate(text, number % 2 == 0 ? WORD : LINE, random) + ASKED);
        });
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
        Outcome outcome;
        try {
            outcome = Workbench.empty().run("cell", source);
            outcome.answers().forEach(Answer::plainText);
        } catch (RuntimeException | StackOverflowError failure) {
            throw new AssertionError(text, failure);
        }
        for (Diagnostic diagnostic : outcome.diagnostics()) {
            Place place = diagnostic.place();
            assertThat(place).as(diagnostic.code() + "\n" + text).isNotNull();
            assertThat(place.span().end()).as(text).isLessThanOrEqualTo(source.length());
        }
    }
}
