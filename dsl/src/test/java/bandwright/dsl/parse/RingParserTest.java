// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.parse;

import java.io.IOException;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.diagnostic.PlainRenderer;
import bandwright.dsl.diagnostic.Suggestion;
import bandwright.dsl.golden.GoldenFiles;
import bandwright.dsl.source.Place;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.source.Span;
import bandwright.dsl.syntax.Printer;
import bandwright.dsl.syntax.Statement;
import bandwright.dsl.syntax.TreeText;

import static org.assertj.core.api.Assertions.assertThat;

class RingParserTest {
    /** Need a text too long to keep as a file. */
    private static final Set<String> TESTED_HERE = Set.of(
            "text-too-long",
            "too-many-words",
            "too-many-statements",
            "statement-too-long",
            "too-deep",
            "too-many-errors",
            "number-too-large");

    @TestFactory
    Stream<DynamicTest> texts_become_the_expected_trees() {
        return GoldenFiles.tests("parse", "tree", input -> {
            ParseResult result = RingParser.parse(input.source());
            return PlainRenderer.render(result.diagnostics()) + TreeText.of(result.cell());
        });
    }

    @TestFactory
    Stream<DynamicTest> slips_get_the_expected_messages() {
        return GoldenFiles.tests(
                "errors",
                "err",
                input -> PlainRenderer.render(RingParser.parse(input.source()).diagnostics()));
    }

    @TestFactory
    Stream<DynamicTest> a_printed_tree_parses_to_the_same_tree() {
        return Stream.of("parse", "errors")
                .flatMap(area -> GoldenFiles.cases(area).stream())
                .flatMap(input -> RingParser.parse(input.source()).cell().statements().stream())
                .map(statement -> DynamicTest.dynamicTest(
                        Printer.print(statement).lines().findFirst().orElse(""),
                        () -> assertPrintsAndParses(statement)));
    }

    private static void assertPrintsAndParses(Statement statement) {
        String printed = Printer.print(statement);
        ParseResult again = parse(printed);
        assertThat(again.diagnostics()).isEmpty();
        assertThat(again.cell().statements()).hasSize(1);
        assertThat(TreeText.of(again.cell().statements().get(0))).isEqualTo(TreeText.of(statement));
        assertThat(Printer.print(again.cell())).isEqualTo(printed);
    }

    @TestFactory
    Stream<DynamicTest> a_suggested_edit_takes_its_fault_away() {
        return GoldenFiles.cases("errors").stream().flatMap(input -> {
            ParseResult result = RingParser.parse(input.source());
            return result.diagnostics().stream()
                    .filter(diagnostic -> diagnostic.suggestion() != null
                            && diagnostic.suggestion().place() != null)
                    .map(diagnostic -> DynamicTest.dynamicTest(
                            input.name() + ": " + diagnostic.code(), () -> assertHelps(result, diagnostic)));
        });
    }

    private static void assertHelps(ParseResult result, Diagnostic diagnostic) {
        Suggestion suggestion = diagnostic.suggestion();
        assertThat(suggestion).isNotNull();
        Place place = suggestion.place();
        assertThat(place).isNotNull();
        SourceText source = place.source();
        String edited = source.text(new Span(0, place.span().start()))
                + suggestion.text()
                + source.text(new Span(place.span().end(), source.length()));
        assertThat(parse(edited).diagnostics())
                .as(edited)
                .hasSizeLessThan(result.diagnostics().size());
    }

    @Test
    void every_message_about_reading_has_a_golden_case() throws IOException {
        Set<String> shown = new TreeSet<>(TESTED_HERE);
        for (GoldenFiles.Case input : GoldenFiles.cases("errors")) {
            RingParser.parse(input.source()).diagnostics().forEach(diagnostic -> shown.add(diagnostic.code()));
        }
        assertThat(shown).isEqualTo(GoldenFiles.codes("parse"));
    }

    @Test
    void a_statement_with_a_fault_does_not_hide_the_others() {
        ParseResult result = parse("title \"a\"\nbreadth 4 mm\nshow ring\nband {\n}\nshow stones\n");

        assertThat(result.diagnostics())
                .extracting(Diagnostic::code)
                .containsExactly("missing-equals", "statement-without-name");
        assertThat(result.cell().statements()).hasSize(3);
    }

    @Test
    void columns_count_code_points() {
        ParseResult result = parse("title \"\uD83D\uDC8D\" ; \n");

        assertThat(result.diagnostics()).singleElement().satisfies(diagnostic -> {
            assertThat(diagnostic.place()).isNotNull();
            assertThat(diagnostic.place().column()).isEqualTo(11);
        });
    }

    @Test
    void names_are_equal_however_their_accents_are_typed() {
        assertThat(TreeText.of(parse("cafe\u0301 = 1 mm").cell()))
                .isEqualTo(TreeText.of(parse("caf\u00e9 = 1 mm").cell()));
    }

    @Test
    void a_text_of_more_than_five_million_characters_is_not_read() {
        ParseResult result = parse(" ".repeat(RingParser.LONGEST + 1));

        assertThat(result.diagnostics()).extracting(Diagnostic::code).containsExactly("text-too-long");
    }

    @Test
    void a_text_with_too_many_words_or_statements_is_not_read() {
        assertThat(parse("+".repeat(Scanner.MOST_WORDS + 1)).diagnostics())
                .extracting(Diagnostic::code)
                .containsExactly("too-many-words");
        assertThat(parse("1\n".repeat(RingParser.MOST_STATEMENTS)).diagnostics())
                .isEmpty();
        assertThat(parse("1\n".repeat(RingParser.MOST_STATEMENTS + 1)).diagnostics())
                .extracting(Diagnostic::code)
                .containsExactly("too-many-statements");
    }

    @Test
    void a_statement_with_too_many_words_is_not_read_but_the_others_are() {
        ParseResult result = parse("a = 1" + " + 1".repeat(StatementCutter.LONGEST) + "\nb = 2");
        assertThat(result.diagnostics()).extracting(Diagnostic::code).containsExactly("statement-too-long");
        assertThat(result.cell().statements()).hasSize(1);
    }

    @Test
    void brackets_nest_two_hundred_deep_and_no_deeper() {
        assertThat(parse("x = " + "(".repeat(200) + "1" + ")".repeat(200)).diagnostics())
                .isEmpty();
        assertThat(parse("x = " + "(".repeat(201) + "1" + ")".repeat(201)).diagnostics())
                .extracting(Diagnostic::code)
                .containsExactly("too-deep");
    }

    @Test
    void endless_signs_conditions_powers_and_sums_are_too_deep() {
        int many = 3_000;
        for (String text : new String[] {
            "x = " + "- ".repeat(many) + "1",
            "x = " + "not ".repeat(many) + "true",
            "x = " + "if a then b else ".repeat(many) + "c",
            "x = 2" + "^2".repeat(many),
            "x = 1" + " + 1".repeat(many),
            "x = a" + " in mm".repeat(many),
            "x = " + "(".repeat(many),
            "x = " + "f(".repeat(many) + "1" + ")".repeat(many),
            "cut a for b from c { " + "channel { ".repeat(many)
        }) {
            assertThat(parse(text).diagnostics())
                    .as(text.substring(0, 20))
                    .extracting(Diagnostic::code)
                    .contains("too-deep");
        }
    }

    @Test
    void errors_are_counted_up_to_two_hundred() {
        ParseResult result = parse("breadth 4 mm\n".repeat(1000));

        assertThat(result.diagnostics()).hasSize(201);
        assertThat(result.diagnostics().get(200).code()).isEqualTo("too-many-errors");
    }

    @Test
    void a_number_beyond_all_bounds_is_an_error() {
        assertThat(parse("x = " + "9".repeat(400) + " mm").diagnostics())
                .extracting(Diagnostic::code)
                .containsExactly("number-too-large");
    }

    private static ParseResult parse(String text) {
        return RingParser.parse(new SourceText("cell 1", text));
    }
}
