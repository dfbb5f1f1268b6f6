// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.source;

import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;

class SourceTextTest {
    @Test
    void lines_end_with_any_of_the_three_line_ends() {
        SourceText source = new SourceText("cell 1", "a\r\nbc\rd\n");

        assertThat(source.lineCount()).isEqualTo(4);
        assertThat(source.lineText(1)).isEqualTo("a");
        assertThat(source.lineText(2)).isEqualTo("bc");
        assertThat(source.lineText(3)).isEqualTo("d");
        assertThat(source.lineText(4)).isEmpty();
    }

    @Test
    void columns_count_code_points() {
        SourceText source = new SourceText("cell 1", "x\n\uD83D\uDC8Dy");

        assertThat(source.length()).isEqualTo(4);
        assertThat(source.place(new Span(3, 4)))
                .hasToString("cell 1, line 2, column 2")
                .extracting(Place::text)
                .isEqualTo("y");
    }

    @Test
    void the_end_of_the_text_is_a_place_too() {
        assertThat(new SourceText("a", "xy\n").place(new Span(3, 3))).hasToString("a, line 2, column 1");
        assertThat(new SourceText("a", "").place(new Span(0, 0))).hasToString("a, line 1, column 1");
    }
}
