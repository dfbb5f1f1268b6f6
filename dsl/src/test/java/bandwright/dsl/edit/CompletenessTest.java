// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.edit;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import bandwright.dsl.edit.Completeness.State;
import bandwright.dsl.source.SourceText;

import static org.assertj.core.api.Assertions.assertThat;

class CompletenessTest {
    private static Completeness of(String text) {
        return Completeness.of(new SourceText("text", text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "  ", "# a comment", "x = 5 mm", "band x { }", "show ring\n"})
    void a_sound_text_is_complete(String text) {
        assertThat(of(text)).isEqualTo(new Completeness(State.COMPLETE, ""));
    }

    @ParameterizedTest
    @ValueSource(strings = {"x =", "x = 5 mm +", "x = (5 mm", "profile p = court(width: 3 mm,", "require"})
    void an_open_end_wants_more(String text) {
        assertThat(of(text)).isEqualTo(new Completeness(State.INCOMPLETE, ""));
    }

    @ParameterizedTest
    @ValueSource(strings = {"band x {", "band x {\n  finger ISO 54", "band x {\n  finger ISO 54\n"})
    void in_braces_the_next_line_is_set_in(String text) {
        assertThat(of(text)).isEqualTo(new Completeness(State.INCOMPLETE, "  "));
    }

    @ParameterizedTest
    @ValueSource(strings = {"show )", "x 5 mm y", "title \"a", "x = 1,3 mm", "band x { finger = ISO 5"})
    void what_nothing_can_mend_is_invalid(String text) {
        assertThat(of(text).state()).isEqualTo(State.INVALID);
    }
}
