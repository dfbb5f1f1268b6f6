// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.resolve;

import org.junit.jupiter.api.Test;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.parse.RingParser;
import bandwright.dsl.source.SourceText;

import static org.assertj.core.api.Assertions.assertThat;

class DefinitionsTest {
    @Test
    void a_cell_run_again_replaces_all_that_it_made() {
        Definitions first = run(Definitions.EMPTY, "1", "a = 1 mm\nb = 2 mm").definitions();
        Definitions.Change again = run(first, "1", "b = 3 mm");

        assertThat(again.diagnostics()).isEmpty();
        assertThat(again.definitions().names()).containsExactly("b");
        assertThat(first.names()).containsExactly("a", "b");
    }

    @Test
    void a_name_of_another_cell_is_replaced_and_that_is_said() {
        Definitions first = run(Definitions.EMPTY, "1", "a = 1 mm\nb = 2 mm").definitions();
        Definitions.Change second = run(first, "2", "a = 3 mm because \"wider\"");

        assertThat(second.diagnostics()).singleElement().satisfies(note -> {
            assertThat(note.code()).isEqualTo("redefined");
            assertThat(note.isError()).isFalse();
            assertThat(note.message()).isEqualTo("a replaces what was defined in cell 1, line 1");
            assertThat(note.found()).isEqualTo("1 mm");
        });
        assertThat(second.definitions().find("a").map(Entry::said)).contains("3 mm");
        assertThat(second.definitions().find("b")).isPresent();
    }

    @Test
    void redefinitions_are_remembered_with_their_reasons() {
        Definitions first = run(Definitions.EMPTY, "1", "a = 1 mm").definitions();
        Definitions second = run(first, "1", "a = 2 mm because \"wider\"").definitions();
        Definitions third = run(second, "1", "a = 2 mm because \"wider\"").definitions();

        assertThat(third.redefinitions()).singleElement().satisfies(change -> {
            assertThat(change.oldText()).isEqualTo("1 mm");
            assertThat(change.newText()).isEqualTo("2 mm");
            assertThat(change.reason()).contains("wider");
        });
    }

    @Test
    void a_part_made_elsewhere_takes_its_whole_statement_with_it() {
        Definitions first = run(
                        Definitions.EMPTY,
                        "1",
                        "cut trough from shank { width 1 mm depth 1 mm keep stripe in silver-925 }")
                .definitions();
        Definitions.Change second = run(first, "2", "stripe = 3 mm");

        assertThat(second.definitions().names()).containsExactly("stripe");
        assertThat(second.diagnostics()).extracting(Diagnostic::code).containsExactly("redefined");
        assertThat(second.diagnostics().get(0).advice()).isEqualTo("All of trough, which made stripe, is taken away.");
    }

    @Test
    void the_same_words_replace_an_earlier_request_without_a_word() {
        Definitions first = run(Definitions.EMPTY, "1", "require 1 mm < 2 mm\nmeasured weight(shank) = 5 g")
                .definitions();
        Definitions.Change second = run(
                first, "2", "require 1 mm<2 mm because \"so\"\nmeasured weight(shank) = 6 g\noption \"x\" { a = 1 }");
        Definitions.Change third = run(second.definitions(), "3", "option \"x\" { a = 2 }");

        assertThat(third.diagnostics()).isEmpty();
        assertThat(third.definitions().requirements())
                .singleElement()
                .satisfies(entry -> assertThat(entry.because()).contains("so"));
        assertThat(third.definitions().measured())
                .singleElement()
                .satisfies(entry -> assertThat(entry.text()).contains("6 g"));
        assertThat(third.definitions().options())
                .singleElement()
                .satisfies(entry -> assertThat(entry.text()).contains("a = 2"));
    }

    @Test
    void forgetting_takes_a_name_away_in_the_order_of_the_text() {
        Definitions first = run(Definitions.EMPTY, "1", "a = 1 mm\nb = 2 mm").definitions();

        assertThat(run(first, "2", "forget a").definitions().names()).containsExactly("b");
        assertThat(run(first, "2", "forget a\na = 3 mm").diagnostics()).isEmpty();
        assertThat(run(first, "2", "a = 3 mm\nforget a").definitions().names()).containsExactly("b");
        assertThat(first.forget("b").definitions().names()).containsExactly("a");
        assertThat(first.without("1").names()).isEmpty();
    }

    @Test
    void an_error_changes_nothing() {
        Definitions first = run(Definitions.EMPTY, "1", "a = 1 mm").definitions();
        Definitions.Change second = run(first, "1", "a = 2 mm\na = 3 mm");

        assertThat(second.hasErrors()).isTrue();
        assertThat(second.definitions()).isSameAs(first);
    }

    @Test
    void the_later_title_holds() {
        Definitions first = run(Definitions.EMPTY, "1", "title \"a\"").definitions();
        assertThat(run(first, "2", "title \"b\"").definitions().title()).contains("b");
    }

    private static Definitions.Change run(Definitions definitions, String cell, String text) {
        SourceText source = new SourceText("cell " + cell, text);
        return definitions.with(cell, source, RingParser.parse(source).cell());
    }
}
