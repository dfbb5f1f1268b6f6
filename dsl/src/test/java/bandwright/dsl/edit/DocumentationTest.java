// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.edit;

import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

import bandwright.dsl.Workbench;
import bandwright.dsl.construct.Workshop;
import bandwright.dsl.measure.RingMeasurer;
import bandwright.dsl.parse.Expected;
import bandwright.dsl.quantity.Unit;
import bandwright.dsl.resolve.expression.Functions;
import bandwright.dsl.resolve.profile.Form;
import bandwright.dsl.source.SourceText;

import static org.assertj.core.api.Assertions.assertThat;

class DocumentationTest {
    private final Workbench workbench = Workbench.empty()
            .define("a", new SourceText("cell 1", "breadth = 2 mm + 2.6 mm because \"it fits\"\nhalf = breadth / 2"))
            .workbench();

    @Test
    void every_word_of_the_language_has_its_sentence() {
        Stream<String> words = Stream.of(
                        Expected.allWords().stream(),
                        Functions.WORDS.stream(),
                        new RingMeasurer(new Workshop()).words().stream(),
                        Unit.symbols().stream().filter(unit -> !unit.contains("^") && !unit.contains("/")),
                        Form.words().stream())
                .flatMap(some -> some);
        assertThat(words.filter(word -> WordHelp.of(word).isEmpty())).isEmpty();
    }

    @Test
    void a_name_tells_its_value_its_text_and_its_place() {
        Documentation told = workbench
                .documentation(new SourceText("cell 2", "show breadth"), 7)
                .orElseThrow();
        assertThat(told.title()).isEqualTo("breadth = 4.6 mm");
        assertThat(told.lines())
                .isEqualTo(List.of("breadth = 2 mm + 2.6 mm because \"it fits\"", "defined in cell 1, line 1"));
    }

    @Test
    void metals_and_stones_tell_their_source() {
        assertThat(at("band x { metal platinum-950-ru }", 18)).contains("g/cm^3", "source:");
        assertThat(at("stone-row r on x { stone round diamond 1 mm }", 33)).contains("g/cm^3", "source:");
    }

    @Test
    void a_word_is_meant_from_its_first_letter_to_behind_its_last() {
        assertThat(at("weight(ring)", 0)).startsWith("weight");
        assertThat(at("weight(ring)", 6)).startsWith("weight");
        assertThat(at("weight(ring)", 7)).startsWith("ring");
        assertThat(workbench.documentation(new SourceText("cell 2", "  # breadth"), 6))
                .isEmpty();
    }

    private String at(String text, int offset) {
        return workbench
                .documentation(new SourceText("cell 2", text), offset)
                .orElseThrow()
                .text();
    }
}
