// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.diagnostic;

import java.util.List;

import org.junit.jupiter.api.Test;

import bandwright.dsl.source.Place;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.source.Span;

import static org.assertj.core.api.Assertions.assertThat;

class RendererTest {
    private static final SourceText CELL = new SourceText("cell 3", "\n\n\n\n\n\nthickness = breadth + 2 g\n");

    private static Place place(String words) {
        int start = CELL.text().indexOf(words);
        return CELL.place(new Span(start, start + words.length()));
    }

    private static Diagnostic mismatch() {
        Place left = place("breadth");
        Place right = place("2 g");
        return new Diagnostic(
                "unit-mismatch",
                Severity.ERROR,
                "a length and a weight cannot be added",
                left,
                List.of(new Label(left, "a length, defined in cell 1, line 4"), new Label(right, "a weight")),
                null,
                "two quantities of the same kind",
                new Suggestion(right, "2 mm"),
                null);
    }

    @Test
    void plain_text_underlines_the_least_that_shows_the_fault() {
        assertThat(PlainRenderer.render(mismatch())).isEqualTo("""
                error unit-mismatch: a length and a weight cannot be added
                  --> cell 3, line 7, column 13
                7 | thickness = breadth + 2 g
                  |             ^^^^^^^   ^^^ a weight
                  |             a length, defined in cell 1, line 4
                expected  two quantities of the same kind
                try       thickness = breadth + 2 mm
                """);
    }

    @Test
    void a_label_in_another_cell_gets_its_own_excerpt() {
        SourceText first = new SourceText("cell 1", "a = 1 mm\n");
        SourceText twelfth = new SourceText("cell 12", "\n\n\n\n\n\n\n\n\na = 2 mm\n");
        Diagnostic diagnostic = new Diagnostic(
                "replaced",
                Severity.NOTE,
                "a has a new definition",
                twelfth.place(new Span(9, 10)),
                List.of(new Label(first.place(new Span(0, 1)), "the old one")),
                null,
                null,
                null,
                null);

        assertThat(PlainRenderer.render(diagnostic)).isEqualTo("""
                note replaced: a has a new definition
                   --> cell 12, line 10, column 1
                10 | a = 2 mm
                   | ^
                   --> cell 1, line 1, column 1
                 1 | a = 1 mm
                   | ^ the old one
                """);
    }

    @Test
    void html_escapes_what_people_wrote() {
        SourceText source = new SourceText("<b>", "x < \"&\"");
        Diagnostic diagnostic = new Diagnostic(
                "code",
                Severity.ERROR,
                "a < b",
                source.place(new Span(2, 3)),
                List.of(),
                null,
                null,
                new Suggestion(null, "<i>"),
                null);

        assertThat(HtmlRenderer.render(diagnostic))
                .contains("x &lt; &quot;&amp;&quot;")
                .contains("&lt;b&gt;, line 1")
                .contains("<code>&lt;i&gt;</code>")
                .doesNotContain("<b>")
                .doesNotContain("<i>");
    }

    @Test
    void near_names_are_few_and_in_a_fixed_order() {
        assertThat(NearNames.nearest("bnad", List.of("band", "bind", "cut", "bad", "bend", "ban")))
                .containsExactly("bad", "band");
        assertThat(NearNames.nearest("breath", List.of("wreath", "breadth", "breathe", "bread", "beach")))
                .containsExactly("breadth", "breathe", "wreath");
        assertThat(NearNames.distance("abcd", "acbd")).isEqualTo(1);
    }

    @Test
    void a_line_too_long_for_a_screen_is_shown_round_its_fault() {
        String text = "x = " + "1 mm + ".repeat(200) + "2 g";
        SourceText source = new SourceText("long.ring", text);
        Place place = new Place(source, new Span(text.length() - 3, text.length()));

        String rendered =
                PlainRenderer.render(Diagnostic.error("division-by-zero", place).build());

        assertThat(rendered.lines())
                .allSatisfy(line -> assertThat(line.length()).isLessThan(220));
        String shown = rendered.lines()
                .filter(line -> line.startsWith("1 |"))
                .findFirst()
                .orElseThrow();
        String carets =
                rendered.lines().filter(line -> line.contains("^")).findFirst().orElseThrow();
        assertThat(shown).contains("\u2026").endsWith("2 g");
        assertThat(shown.substring(carets.indexOf('^'))).isEqualTo("2 g");
    }
}
