// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl;

import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import bandwright.dsl.source.SourceText;

import static org.assertj.core.api.Assertions.assertThat;

class FingerprintsTest {
    private static final String RING = """
            a = 4 mm between 3 mm and 6 mm
            cap = 9 g
            profile dome = flat(width: a, height: 2 mm)
            band shank { finger ISO 57  profile dome  metal silver-925 }
            """;

    @ParameterizedTest
    @ValueSource(strings = {"", "b = 1 mm", "metal own { density 10 g/cm^3 }", "show )"})
    void a_cell_that_asks_nothing_hangs_on_nothing(String cell) {
        assertThat(print("", cell)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "show a|a|true",
                "show cap|a|false",
                "show ring|a|true",
                "show ring|cap|false",
                "show shank|a|true",
                "show weights|a|true",
                "show weights|cap|false",
                "show section at 0 deg|a|true",
                "require weight(ring) < cap|a|true",
                "require weight(ring) < cap|cap|true",
                "require weight(ring) < 9 g|cap|false",
                "explain weight(shank)|a|true",
                "vary a over 4 mm, 5 mm { weight(ring) }|a|true",
                "what-if a = 5 mm|cap|false",
                "show fingerprint|cap|true",
                "show options|cap|false",
            })
    void an_answer_hangs_on_what_is_asked_about(String cell, String changed, boolean hangs) {
        String other = changed.equals("a") ? RING.replace("a = 4 mm", "a = 5 mm") : RING.replace("9 g", "8 g");

        assertThat(print(other, cell).equals(print(RING, cell))).isEqualTo(!hangs);
        assertThat(print(RING, cell)).isPresent();
    }

    @Test
    void what_nobody_asks_about_changes_no_answer() {
        assertThat(print(RING + "unrelated = 1 mm\n", "show ring")).isEqualTo(print(RING, "show ring"));
    }

    private static Optional<String> print(String design, String cell) {
        Outcome outcome = Workbench.empty().run("design", new SourceText("design", design));
        assertThat(outcome.hasErrors()).isFalse();
        return outcome.workbench().fingerprintOf(new SourceText("cell", cell));
    }
}
