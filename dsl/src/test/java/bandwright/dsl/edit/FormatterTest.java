// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.edit;

import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

import bandwright.dsl.golden.GoldenFiles;
import bandwright.dsl.parse.RingParser;
import bandwright.dsl.parse.TextWord;
import bandwright.dsl.parse.TextWords;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.syntax.Printer;

import static org.assertj.core.api.Assertions.assertThat;

class FormatterTest {
    @TestFactory
    Stream<DynamicTest> untidy_texts_are_set_as_the_files_say() {
        return GoldenFiles.tests("edit", "tidy", input -> Formatter.format(input.text()));
    }

    @Test
    void a_tidy_text_stays_as_it_is() {
        String text = GoldenFiles.cases("parse").stream()
                .filter(input -> input.name().equals("harbour-light"))
                .findFirst()
                .orElseThrow()
                .text();
        assertThat(Formatter.format(text)).isEqualTo(text);
    }

    @TestFactory
    Stream<DynamicTest> formatting_keeps_meaning_and_comments_and_is_done_once() {
        return Stream.of("parse", "resolve", "workbench", "edit")
                .flatMap(area -> GoldenFiles.cases(area).stream())
                .map(input -> DynamicTest.dynamicTest(input.name(), () -> {
                    String once = Formatter.format(input.text());
                    assertThat(Formatter.format(once)).isEqualTo(once);
                    assertThat(meaning(once)).isEqualTo(meaning(input.text()));
                    assertThat(comments(once)).isEqualTo(comments(input.text()));
                }));
    }

    @Test
    void a_text_with_a_slip_is_left_alone() {
        assertThat(Formatter.format("a   =   1,3 mm")).isEqualTo("a   =   1,3 mm");
        assertThat(Formatter.format("a   =   €")).isEqualTo("a   =   €");
    }

    private static List<String> meaning(String text) {
        return RingParser.parse(new SourceText("text", text)).cell().statements().stream()
                .map(Printer::print)
                .toList();
    }

    private static List<String> comments(String text) {
        return TextWords.of(new SourceText("text", text)).stream()
                .filter(word -> word.is(TextWord.Role.COMMENT))
                .map(word -> word.text().strip())
                .toList();
    }
}
