// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.export;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import static org.assertj.core.api.Assertions.assertThat;

class CodeMarkupTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "5 mm",
                "5mm",
                "1/4 mm",
                "7 1/2",
                "13.1 g/cm^3",
                "US 7 1/4",
                "UK N 1/2",
                "ISO 57",
                "10 %",
                "0.8 mm^2"
            })
    void a_dimension_is_one_piece(String dimension) {
        assertThat(CodeMarkup.mark("x = " + dimension))
                .isEqualTo("x = <span class=\"ring-number\">" + dimension + "</span>");
    }

    @Test
    void statement_words_count_at_the_start_of_a_line_only() {
        assertThat(CodeMarkup.mark("band shank {\n  metal white\n}\nband-width = a2"))
                .isEqualTo("<span class=\"ring-word\">band</span> shank {\n  metal white\n}\nband-width = a2");
    }

    @Test
    void comments_and_strings_hold_what_they_hold() {
        assertThat(CodeMarkup.mark("title \"5 mm # <b>\" # 5 mm"))
                .isEqualTo(
                        "<span class=\"ring-word\">title</span> <span class=\"ring-string\">&quot;5 mm # &lt;b&gt;&quot;</span>"
                                + " <span class=\"ring-comment\"># 5 mm</span>");
    }
}
