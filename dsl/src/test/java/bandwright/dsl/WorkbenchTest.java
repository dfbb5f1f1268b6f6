// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.diagnostic.PlainRenderer;
import bandwright.dsl.golden.GoldenFiles;
import bandwright.dsl.material.MetalCatalogue;
import bandwright.dsl.source.Place;
import bandwright.dsl.source.SourceText;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

class WorkbenchTest {
    private static final String BAND = """
            breadth = 4.6 mm between 3 mm and 8 mm
            finger-size = ISO 57
            profile dome = d-shape(width: breadth, height: 1.9 mm, side: 1.25 mm)
            band shank { finger finger-size  profile dome  metal silver-925 }
            """;

    @TestFactory
    Stream<DynamicTest> answers_and_errors_are_as_expected() {
        return GoldenFiles.tests(
                "workbench", "out", input -> text(Workbench.empty().run("cell-1", input.source())));
    }

    private static String text(Outcome outcome) {
        StringBuilder text = new StringBuilder();
        outcome.diagnostics()
                .forEach(told -> text.append(PlainRenderer.render(told)).append("\n"));
        outcome.answers()
                .forEach(answer -> text.append(answer.plainText().strip()).append("\n\n"));
        return text.toString();
    }

    /** Codes that a cell never meets: they belong to values given from outside, and to the report. */
    private static final Set<String> GIVEN = Set.of(
            "given-no-value",
            "given-unknown-name",
            "given-wrong-kind",
            "given-not-worked-out",
            "asked-no-value",
            "judged-no-condition",
            "no-plan",
            "loose-pieces");

    @Test
    void every_code_from_construction_to_answer_has_a_case() {
        Set<String> told = new TreeSet<>();
        GoldenFiles.cases("workbench")
                .forEach(input -> Workbench.empty()
                        .run("cell-1", input.source())
                        .diagnostics()
                        .forEach(diagnostic -> told.add(diagnostic.code())));
        Set<String> ours = new TreeSet<>();
        for (String section : List.of("construct", "measure", "offer", "workbench", "export")) {
            ours.addAll(GoldenFiles.codes(section));
        }
        ours.removeAll(GIVEN);
        assertThat(told).containsAll(ours);
    }

    @Test
    void the_section_of_the_whole_example_is_drawn_as_before() {
        GoldenFiles.Case example = GoldenFiles.cases("workbench").stream()
                .filter(input -> input.name().equals("harbour-light"))
                .findFirst()
                .orElseThrow();
        String svg = Workbench.empty().run("cell-1", example.source()).answers().stream()
                .filter(Answer.Drawn.class::isInstance)
                .map(answer -> ((Answer.Drawn) answer).svg())
                .collect(Collectors.joining());
        GoldenFiles.check(Path.of("src/test/golden/workbench/harbour-light.svg"), svg);
    }

    @Test
    void the_order_of_cells_does_not_change_the_ring() {
        List<String> cells = List.of(
                "breadth = 5 mm",
                "profile dome = d-shape(width: breadth, height: 1.9 mm, side: 1.25 mm)",
                "band shank { finger ISO 57  profile dome  metal silver-925 }");
        Workbench forwards = Workbench.empty();
        Workbench backwards = Workbench.empty();
        for (int i = 0; i < cells.size(); i++) {
            forwards = run(forwards, "c" + i, cells.get(i)).workbench();
            int j = cells.size() - 1 - i;
            backwards = run(backwards, "c" + j, cells.get(j)).workbench();
        }
        assertThat(forwards.report().parts()).hasSize(1);
        assertThat(backwards.report()).isEqualTo(forwards.report());
    }

    @Test
    void a_cell_with_an_error_changes_nothing() {
        Workbench before = run(Workbench.empty(), "a", BAND).workbench();
        Outcome outcome = run(before, "b", "breadth = 5 mm\nfinger-size = 5 mm + 2 g");
        assertThat(outcome.hasErrors()).isTrue();
        assertThat(outcome.workbench()).isSameAs(before);
    }

    @Test
    void what_a_refused_cell_would_have_defined_is_missed_by_its_name() {
        Workbench before = run(Workbench.empty(), "a", BAND).workbench();
        Workbench refused = run(
                        before,
                        "cell 3",
                        "f = 2 mm\nthick = 5 mm + 2 g\ncut trough from shank {\n  width = 1 mm\n  keep stripe in silver-925\n}")
                .workbench();
        assertThat(refused.report().fingerprint()).isEqualTo(before.report().fingerprint());

        Outcome missing = run(refused, "cell 4", "far = f * 2\nshow far\nshow stripe\nshow nobody");
        assertThat(advice(missing))
                .contains(
                        "not-defined-yet f: cell 3 would have defined it, but was refused: mend it and run it again.",
                        "not-defined-yet stripe: cell 3 would have defined it, but was refused: mend it and run it again.",
                        "waits far: cell 3 would have defined it, but was refused: mend it and run it again.",
                        "not-defined-yet nobody: null");
        assertThat(missing.workbench().report().troubles())
                .extracting(Diagnostic::advice)
                .contains("cell 3 would have defined it, but was refused: mend it and run it again.");

        Workbench again = run(refused, "cell 3", "thick = 5 mm").workbench();
        assertThat(advice(run(again, "cell 4", "show f\nshow stripe")))
                .containsExactly("not-defined-yet f: null", "not-defined-yet stripe: null");
        assertThat(advice(run(refused, "cell 3", "show f"))).containsExactly("not-defined-yet f: null");
        Workbench elsewhere = run(refused, "cell 5", "f = 1 mm").workbench();
        assertThat(advice(run(elsewhere, "cell 6", "forget f\nshow f"))).containsExactly("not-defined-yet f: null");
        assertThat(advice(run(refused.without("cell 3"), "cell 4", "show f")))
                .containsExactly("not-defined-yet f: null");
    }

    /** Code, words and advice of all that was told. */
    private static List<String> advice(Outcome outcome) {
        return outcome.diagnostics().stream()
                .map(told -> {
                    Place place = Objects.requireNonNull(told.place());
                    return told.code() + " " + place.source().text(place.span()) + ": " + told.advice();
                })
                .toList();
    }

    @Test
    void a_change_that_breaks_another_cell_is_refused_and_says_where() {
        Workbench before =
                run(Workbench.empty(), "a", BAND + "height = 1.9 mm\n").workbench();
        before = run(before, "a2", "profile low = d-shape(width: breadth, height: height, side: 1.25 mm)")
                .workbench();
        Outcome outcome = run(before, "b", "height = 1 mm");
        assertThat(outcome.hasErrors()).isTrue();
        assertThat(outcome.diagnostics().stream().filter(Diagnostic::isError))
                .anySatisfy(error -> assertThat(String.valueOf(error.place())).startsWith("a2, line 1"));
        assertThat(outcome.workbench()).isSameAs(before);
    }

    @Test
    void running_a_cell_again_replaces_what_it_made() {
        Workbench first = run(Workbench.empty(), "a", BAND).workbench();
        Workbench second = run(first, "a", BAND.replace("4.6 mm", "5 mm")).workbench();
        assertThat(second.report().parts().get(0).volumeMm3())
                .isGreaterThan(first.report().parts().get(0).volumeMm3());
        assertThat(second.without("a").report().parts()).isEmpty();
    }

    @Test
    void a_given_value_changes_the_ring_as_the_text_would() {
        Workbench ring = run(Workbench.empty(), "a", BAND).workbench();
        Workbench given = ring.withValue("breadth", "5.5 mm").workbench();
        Workbench typed =
                run(Workbench.empty(), "a", BAND.replace("4.6 mm", "5.5 mm")).workbench();
        assertThat(given.report().parts()).isEqualTo(typed.report().parts());
    }

    @Test
    void given_values_that_cannot_be_are_told() {
        Workbench ring = run(Workbench.empty(), "a", BAND).workbench();
        assertThat(codes(ring.withValue("bredth", "5 mm"))).containsExactly("given-unknown-name");
        assertThat(codes(ring.withValue("shank", "5 mm"))).containsExactly("given-unknown-name");
        assertThat(codes(ring.withValue("breadth", "5 g"))).isNotEmpty();
        assertThat(codes(ring.withValue("breadth", "US 8"))).isNotEmpty();
        assertThat(codes(ring.withValue("breadth", "9 mm"))).isNotEmpty();
        assertThat(codes(ring.withValue("finger-size", "US 400"))).isNotEmpty();
        assertThat(codes(ring.withValue("breadth", "5 mm\nthickness = 2 mm"))).containsExactly("given-no-value");
        assertThat(codes(ring.withValue("finger-size", "US8"))).contains("given-not-worked-out");
    }

    @Test
    void an_expression_has_a_value_or_a_reason_why_not() {
        Workbench ring = run(Workbench.empty(), "a", BAND).workbench();

        assertThat(worth(ring, "breadth * 2").text())
                .isEqualTo(worth(ring, "2 * breadth").text());
        assertThat(worth(ring, "breadth").quantity()).isNotNull();
        assertThat(worth(ring, "US 7").size()).isNotNull();
        assertThat(worth(ring, "1 mm < 2 mm").kind()).isEqualTo("true or false");
        assertThat(whyNot(ring, "bredth")).isEqualTo("not-defined-yet");
        assertThat(whyNot(ring, "1 mm + 2 g")).isEqualTo("unit-mismatch");
        assertThat(whyNot(ring, "a = 1 mm")).isEqualTo("asked-no-value");
        assertThat(whyNot(ring, "ring")).isEqualTo("asked-no-value");
        assertThat(whyNot(ring, "")).isEqualTo("asked-no-value");
    }

    private static Worked.Worth worth(Workbench workbench, String expression) {
        return Objects.requireNonNull(
                workbench.value(new SourceText("asked", expression)).worth());
    }

    private static String whyNot(Workbench workbench, String expression) {
        return workbench
                .value(new SourceText("asked", expression))
                .diagnostics()
                .get(0)
                .code();
    }

    @Test
    void neither_names_nor_order_of_grooves_change_the_parts() {
        String let =
                "cut %s from shank { width 1.9 mm depth 1 mm keep stripe in red-gold-585 let-in from fingertip leaving collar }";
        String line = "cut %s from shank { width 0.3 mm depth 0.3 mm across 1.3 mm }";
        List<Report.PartLine> first = parts(BAND + let.formatted("a") + "\n" + line.formatted("b"));
        List<Report.PartLine> second = parts(BAND + line.formatted("a") + "\n" + let.formatted("z"));
        assertThat(first).hasSize(3).isEqualTo(second);
    }

    private static List<Report.PartLine> parts(String text) {
        Outcome outcome = run(Workbench.empty(), "a", text);
        assertThat(outcome.diagnostics()).isEmpty();
        return outcome.workbench().report().parts();
    }

    /** Sizes are told around, then across: eighteen baguettes lying along the row leave less room than standing across it. */
    @Test
    void it_matters_which_way_a_long_stone_lies() {
        assertThat(baguettes("2.5 mm by 1.5 mm")).isEqualTo(baguettes("1.5 mm by 2.5 mm") - 1, within(0.02));
    }

    private static double baguettes(String sizes) {
        Outcome outcome = run(
                Workbench.empty(),
                "a",
                BAND + "stone-row lights on shank { stone baguette sapphire " + sizes + "  around full  count 18 }");
        assertThat(outcome.diagnostics()).isEmpty();
        return Objects.requireNonNull(
                outcome.workbench().report().stoneRows().get(0).gapMm());
    }

    /** Two lines of stones on a flat surface: the gap across is the distance of the lines less a stone, whatever the gap along. */
    @Test
    void the_gap_of_parallel_lines_is_that_between_them_where_it_is_smaller() {
        Outcome outcome = run(Workbench.empty(), "a", """
                profile even = flat(width: 6 mm, height: 2 mm)
                band shank { finger ISO 57  profile even  metal silver-925 }
                stone-row lights on shank { stone round diamond 1.5 mm  around full  count 36  across -0.8 mm, 0.8 mm }
                """);
        assertThat(outcome.diagnostics()).isEmpty();
        assertThat(outcome.workbench().report().stoneRows().get(0).gapMm()).isCloseTo(0.1, within(1e-6));
    }

    @Test
    void a_part_that_falls_apart_is_a_trouble() {
        Outcome outcome = run(Workbench.empty(), "a", """
                profile even = flat(width: 2 mm, height: 2 mm)
                band shank { finger ISO 57  profile even  metal silver-925 }
                stone-row lights on shank { stone round diamond 1.9 mm  around full  count 2  sink 0.2 mm }
                prongs pins for lights on shank { diameter 0.5 mm  rise 0.3 mm  across 4 mm }
                """);
        assertThat(outcome.workbench().report().troubles())
                .extracting(Diagnostic::code)
                .contains("loose-pieces");
    }

    /**
     * Common practice, no source: a domed band 5 mm wide and 2 mm high at US 7 in a 14-karat alloy weighs about 5.2 g. It must lie
     * between the knife-edge and the flat form, and within 6 % of the lens curved in and out by 1 mm each.
     */
    @Test
    void a_domed_band_weighs_what_the_trade_says() {
        double knife = weight("knife-edge(width: 5 mm, height: 2 mm)");
        double lens = weight("court(width: 5 mm, height: 2 mm, side: 1 mm, inside: 1 mm)");
        double flat = weight("flat(width: 5 mm, height: 2 mm)");
        double dome = weight("d-shape(width: 5 mm, height: 2 mm, side: 0.4 mm)");
        assertThat(dome).isBetween(knife, flat);
        assertThat(5.2).isBetween(knife, flat);
        assertThat(lens).isCloseTo(5.2, withinPercentage(6));
    }

    /** "14-karat" alone names no recipe; of the catalogue's, the American yellow casting alloy is the one that is meant most. */
    private static double weight(String form) {
        String metal = MetalCatalogue.recipes("14K").stream()
                .filter(recipe -> recipe.densityGPerCm3() == 13.07)
                .findFirst()
                .orElseThrow()
                .name();
        Outcome outcome = run(
                Workbench.empty(),
                "a",
                "profile form = " + form + "\nband shank { finger US 7  profile form  metal " + metal + " }");
        assertThat(outcome.diagnostics()).isEmpty();
        return outcome.workbench().report().totalWeightG();
    }

    private static Outcome run(Workbench workbench, String cell, String text) {
        return workbench.run(cell, new SourceText(cell, text));
    }

    private static List<String> codes(Outcome outcome) {
        return outcome.diagnostics().stream().map(Diagnostic::code).toList();
    }
}
