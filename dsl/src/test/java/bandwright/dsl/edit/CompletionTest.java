// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.edit;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import bandwright.dsl.Workbench;
import bandwright.dsl.golden.GoldenFiles;
import bandwright.dsl.parse.TextWord;
import bandwright.dsl.parse.TextWord.Role;
import bandwright.dsl.parse.TextWords;
import bandwright.dsl.source.SourceText;

import static org.assertj.core.api.Assertions.assertThat;

class CompletionTest {
    private static final Set<Role> PROPOSED = Set.of(Role.STATEMENT, Role.WORD, Role.UNIT);

    private static final Workbench HARBOUR_LIGHT = Workbench.empty()
            .define("cell-1", new SourceText("cell 1", text("harbour-light")))
            .workbench();

    private static String text(String name) {
        return GoldenFiles.cases("parse").stream()
                .filter(input -> input.name().equals(name))
                .findFirst()
                .orElseThrow()
                .text();
    }

    /** Whatever a sound text goes on with at any place is among the proposals there. */
    @TestFactory
    Stream<DynamicTest> every_word_of_a_sound_text_is_proposed_where_it_stands() {
        return Stream.of("harbour-light", "groove", "stone-row", "seats", "prongs", "band", "offers")
                .map(name -> DynamicTest.dynamicTest(name, () -> everyWordIsProposed(text(name))));
    }

    private static void everyWordIsProposed(String text) {
        SourceText source = new SourceText("text", text);
        for (TextWord word : TextWords.of(source)) {
            // Every currency there is would be a long list.
            boolean currency = word.text().matches("[A-Z]{3}");
            boolean plain =
                    !currency && word.text().codePoints().allMatch(point -> Character.isLetter(point) || point == '-');
            if (PROPOSED.contains(word.role()) && plain) {
                assertThat(words(HARBOUR_LIGHT.completion(source, word.span().start())))
                        .as("line %d before %s", source.line(word.span().start()), word.text())
                        .anyMatch(
                                proposal -> proposal.replaceFirst("[(:].*", "").equals(word.text()));
            }
        }
    }

    private static List<String> words(Completion completion) {
        return completion.proposals().stream().map(Proposal::text).toList();
    }

    private static List<String> proposed(String text) {
        return words(HARBOUR_LIGHT.completion(new SourceText("text", text), text.codePointCount(0, text.length())));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\'',
            value = {
                "'band x { metal palladium-95' | palladium-950",
                "'band x { profile '           | dome",
                "'stone-row r on '             | stripe",
                "'prongs p for '               | lights",
                "'profile p = cou'             | court(",
                "'weight('                     | ring",
                "'vary '                       | breadth",
                "'show section of '            | stripe",
                "'# 😀 é\nx = 1 '             | inch",
            })
    void a_place_offers_what_belongs_there(String text, String word) {
        assertThat(proposed(text)).contains(word);
    }

    @Test
    void only_what_belongs_there_is_offered() {
        assertThat(proposed("prongs p for ")).containsExactly("lights");
        assertThat(proposed("band x { ")).containsExactly("finger", "metal", "profile");
    }

    @Test
    void a_proposal_takes_the_place_of_the_word_being_typed() {
        Completion completion = HARBOUR_LIGHT.completion(new SourceText("text", "title \"😀\" because \"é\"\nbre"), 25);
        assertThat(completion.replaced().start()).isEqualTo(22);
        assertThat(completion.proposals().get(0)).isEqualTo(new Proposal("breadth", Proposal.Sort.NAME, "4.6 mm"));
    }
}
