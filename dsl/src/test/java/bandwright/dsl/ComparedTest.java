// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl;

import java.util.List;
import java.util.Objects;

import org.junit.jupiter.api.Test;

import bandwright.dsl.source.SourceText;
import bandwright.dsl.view.Contrast;
import bandwright.dsl.view.Table;
import bandwright.dsl.view.drawing.Drawing;
import bandwright.dsl.view.drawing.Mark;

import static org.assertj.core.api.Assertions.assertThat;

/** Two designs side by side, and conditions from outside judged on one. */
class ComparedTest {
    private static final String RING = """
            breadth = 4 mm
            finger-size = US 7
            profile dome = flat(width: breadth, height: 2 mm)
            band shank { finger finger-size  profile dome  metal silver-925 }
            require weight(shank) <= 6 g
            """;

    private static final String OTHER = """
            breadth = 5 mm
            finger-size = US 8
            extra = 2 mm
            profile dome = flat(width: breadth, height: extra)
            band shank { finger finger-size  profile dome  metal platinum-950-ru }
            stone-row lights on shank { stone round diamond 1.5 mm  around full  spacing at least 0.2 mm  sink 0.25 mm }
            require weight(shank) <= 6 g
            """;

    private static Workbench bench(String text) {
        Outcome outcome = Workbench.empty().define("a", new SourceText("cell 1", text));
        assertThat(outcome.hasErrors()).as(outcome.diagnostics().toString()).isFalse();
        return outcome.workbench();
    }

    private static Contrast.Line line(Contrast contrast, String name) {
        return contrast.lines().stream()
                .filter(line -> line.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void a_design_is_like_itself_whatever_its_text_looks_like() {
        String spaced = "# mine\n" + RING.replace("  ", "    ").replace("4 mm", "0.4 cm");
        Contrast contrast = bench(RING).compared("one", bench(spaced), "other").contrast();

        assertThat(contrast.lines().stream().filter(line -> !line.same())).isEmpty();
        assertThat(contrast.same()).isTrue();
        assertThat(contrast.summary()).startsWith("no difference in ");
    }

    @Test
    void what_differs_is_told_with_its_unit_and_who_has_it() {
        Contrast contrast = bench(RING).compared("one", bench(OTHER), "other").contrast();

        assertThat(line(contrast, "breadth"))
                .isEqualTo(new Contrast.Line(
                        Contrast.Group.DEFINITIONS, "breadth", "4 mm", "5 mm", "+1 mm", "+25 %", false));
        assertThat(line(contrast, "finger-size").difference()).isEqualTo("+1");
        assertThat(line(contrast, "extra"))
                .isEqualTo(
                        new Contrast.Line(Contrast.Group.DEFINITIONS, "extra", "", "2 mm", "only in other", "", false));
        assertThat(line(contrast, "shank").left()).isEqualTo("metal silver-925");
        assertThat(line(contrast, "shank").right()).isEqualTo("metal platinum-950-ru");
        assertThat(line(contrast, "lights").right()).isEqualTo("a row of stones");
        assertThat(line(contrast, "metal of shank").right()).isEqualTo("platinum-950-ru");
        assertThat(line(contrast, "weight(shank)").difference()).matches("\\+[0-9.]+ g");
        assertThat(line(contrast, "width(shank)").right()).isEqualTo("5 mm");
        assertThat(line(contrast, "count(lights)").left()).isEmpty();
        assertThat(line(contrast, "stone of lights").right()).isEqualTo("round diamond 1.5 mm");
        assertThat(line(contrast, "weight(shank) <= 6 g").left()).isEqualTo("passed");
        assertThat(line(contrast, "weight(shank) <= 6 g").right()).isEqualTo("FAILED");
        assertThat(contrast.same()).isFalse();
        assertThat(contrast.tables()).extracting(Table::title).contains("Definitions", "Measures", "Requirements");
        assertThat(contrast.inOneTable().csv()).startsWith("group,what,one,other,difference,per cent\n");
    }

    @Test
    void the_overlay_has_one_filled_and_one_dashed_to_one_scale() {
        Answer.Drawn drawn = Objects.requireNonNull(
                bench(RING).compared("one", bench(OTHER), "other").overlay());
        Drawing drawing = drawn.drawing();

        assertThat(drawing.marks().get(0)).isInstanceOf(Mark.Shape.class);
        assertThat(drawing.marks().get(0).bounds().width()).isEqualTo(4);
        assertThat(drawing.marks().stream()
                        .filter(mark -> mark instanceof Mark.Stroke stroke
                                && !stroke.dash().lengthsMm().isEmpty())
                        .anyMatch(mark -> Math.abs(mark.bounds().width() - 5) < 1e-9))
                .isTrue();
        assertThat(drawing.description()).contains("Filled: one, 4 mm across", "Dashed: other, 5 mm across");
    }

    @Test
    void a_design_without_a_ring_is_compared_without_an_overlay() {
        Comparison comparison = bench(RING).compared("one", bench("breadth = 4 mm\n"), "other");

        assertThat(comparison.overlay()).isNull();
        assertThat(line(comparison.contrast(), "breadth").same()).isTrue();
        assertThat(line(comparison.contrast(), "weight(shank)").difference()).isEqualTo("only in one");
    }

    @Test
    void conditions_from_outside_are_judged_and_change_nothing() {
        Workbench ring = bench(RING);
        Judged judged = ring.judged(new SourceText(
                "key.ring", "title \"Key\"\nrequire width(shank) >= 4 mm\nrequire count(lights) = 40\n"));

        assertThat(judged.diagnostics()).isEmpty();
        assertThat(judged.requirements()).extracting(Answer.Requirement::passed).containsExactly(true, false);
        assertThat(judged.requirements().get(1).trouble()).contains("lights");
        assertThat(ring.report().requirements()).hasSize(1);
    }

    @Test
    void a_key_that_makes_something_is_refused() {
        Judged judged = bench(RING).judged(new SourceText("key.ring", "breadth = 6 mm\nrequire breadth = 6 mm\n"));

        assertThat(judged.requirements()).isEmpty();
        assertThat(judged.diagnostics()).extracting(told -> told.code()).isEqualTo(List.of("judged-no-condition"));
        assertThat(bench(RING)
                        .judged(new SourceText("key.ring", "require 1 mm <"))
                        .requirements())
                .isEmpty();
    }
}
