// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

import org.junit.jupiter.api.Test;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.view.Table;

import static org.assertj.core.api.Assertions.assertThat;

/** Variants are worked out as if each were alone, whatever their number and the threads that share them. */
class VariantsTest {
    private static final String RING = """
            finger-size = ISO 57
            breadth     = 4.6 mm between 3 mm and 8 mm step 0.1 mm because "level with the other ring"
            thickness   = 1.9 mm between 1.5 mm and 2.4 mm
            metal-used  = silver-925
            profile dome = d-shape(width: breadth, height: thickness, side: 1.25 mm)
            band shank { finger finger-size  profile dome  metal metal-used }
            band guard { finger ISO 55  profile dome-of-guard  metal metal-used }
            profile dome-of-guard = flat(width: 2 mm, height: 1.5 mm)
            cut line from shank { width 1 mm  depth 0.5 mm }
            stone-row lights on shank {
              stone round diamond 1.2 mm  around full  spacing at least 0.15 mm  sink 0.2 mm  across 1 mm
            }
            """;

    private static final String ASKED = " { weight(shank), count(lights), gap(lights), width(shank), weight(guard) }";

    /** Also beyond the ranges: what cannot be made alone has no row of numbers either. */
    @Test
    void every_row_is_what_the_value_alone_gives() {
        Random random = new Random(7);
        Workbench ring = made(RING);
        for (int round = 0; round < 12; round++) {
            List<String> sizes = sample(random, "ISO %.1f", 46, 68);
            List<String> breadths = sample(random, "%.2f mm", 2.2, 8.6);
            List<String> thicknesses = sample(random, "%.2f mm", 1.3, 2.6);
            String axes = "vary finger-size over " + String.join(", ", sizes) + ", breadth over "
                    + String.join(", ", breadths) + ", thickness over " + String.join(", ", thicknesses);
            Answer.Varied varied = vary(ring, axes + ASKED);

            assertThat(varied.table().rows()).hasSize(8);
            int row = 0;
            for (String size : sizes) {
                for (String breadth : breadths) {
                    for (String thickness : thicknesses) {
                        List<String> alone = alone(ring, size, breadth, thickness);
                        assertThat(varied.table().rows().get(row).subList(3, 8))
                                .as(size + ", " + breadth + ", " + thickness)
                                .isEqualTo(alone);
                        row++;
                    }
                }
            }
        }
    }

    @Test
    void after_a_change_stands_what_the_value_alone_gives() {
        Workbench ring = made(RING);
        for (String breadth : List.of("3.2 mm", "5.7 mm", "8 mm")) {
            Table table = ((Answer.Tabled) run(ring, "what-if breadth = " + breadth + " { weight(shank), gap(lights) }")
                            .answers()
                            .get(0))
                    .table();
            Outcome alone = run(ring.withValue("breadth", breadth).workbench(), "show weight(shank)\nshow gap(lights)");

            assertThat(table.rows().get(1).get(2))
                    .isEqualTo(((Answer.Words) alone.answers().get(0)).value());
            assertThat(table.rows().get(2).get(2))
                    .isEqualTo(((Answer.Words) alone.answers().get(1)).value());
        }
    }

    @Test
    void a_search_ends_at_the_last_step_that_holds() {
        Random random = new Random(3);
        Workbench ring = made(RING);
        for (int round = 0; round < 10; round++) {
            String limit = String.format(Locale.ROOT, "%.2f g", 3.5 + random.nextDouble() * 4);
            Outcome found = run(ring, "find largest breadth with weight(shank) <= " + limit);
            String answer = found.answers().get(0).plainText();
            double breadth = Double.parseDouble(answer.replaceAll(".*: ([0-9.]+) mm", "$1"));

            assertThat(weighsAtMost(ring, breadth, limit)).as(answer).isTrue();
            assertThat(weighsAtMost(ring, breadth + 0.1, limit)).as(answer).isFalse();
        }
    }

    private static boolean weighsAtMost(Workbench ring, double breadth, String limit) {
        Outcome changed = ring.withValue("breadth", String.format(Locale.ROOT, "%.1f mm", breadth));
        Outcome asked = run(changed.workbench(), "show weight(shank) <= " + limit);
        return !changed.hasErrors()
                && ((Answer.Words) asked.answers().get(0)).value().equals("true");
    }

    private static List<String> sample(Random random, String format, double low, double high) {
        List<String> sample = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            sample.add(String.format(Locale.ROOT, format, low + random.nextDouble() * (high - low)));
        }
        return sample;
    }

    private static List<String> alone(Workbench ring, String size, String breadth, String thickness) {
        Workbench changed = ring;
        for (List<String> value :
                List.of(List.of("finger-size", size), List.of("breadth", breadth), List.of("thickness", thickness))) {
            Outcome outcome = changed.withValue(value.get(0), value.get(1));
            if (outcome.hasErrors()) {
                return List.of("", "", "", "", "");
            }
            changed = outcome.workbench();
        }
        Outcome asked = run(
                changed,
                "show weight(shank)\nshow count(lights)\nshow gap(lights)\nshow width(shank)\nshow weight(guard)");
        return asked.answers().stream()
                .map(answer -> ((Answer.Words) answer).value().split(" ", 2)[0])
                .toList();
    }

    @Test
    void neither_threads_nor_the_order_of_axes_show() {
        Workbench ring = made(RING);
        String forwards = "vary breadth from 3 mm to 6 mm step 0.25 mm, metal-used over silver-925, platinum-950-ru";
        String backwards = "vary metal-used over silver-925, platinum-950-ru, breadth from 3 mm to 6 mm step 0.25 mm";

        Answer.Varied once = vary(ring, forwards + ASKED);

        assertThat(vary(made(RING), forwards + ASKED)).isEqualTo(once);
        List<List<String>> swapped = vary(ring, backwards + ASKED).table().rows().stream()
                .map(row -> List.of(row.get(1), row.get(0), row.get(2), row.get(3), row.get(4), row.get(5), row.get(6)))
                .toList();
        List<List<String>> straight =
                once.table().rows().stream().map(row -> row.subList(0, 7)).toList();
        assertThat(swapped).containsExactlyInAnyOrderElementsOf(straight);
    }

    /** Each variant has a shape of its own, so nothing that is remembered helps; only what a person reads is shown. */
    @Test
    void ten_thousand_variants_are_worked_out_in_little_memory() {
        Workbench ring = made("""
                breadth = 4.6 mm between 3 mm and 8 mm
                thickness = 1.9 mm between 1.5 mm and 2.4 mm
                profile dome = d-shape(width: breadth, height: thickness, side: 1.25 mm)
                band shank { finger ISO 57  profile dome  metal silver-925 }
                """);
        List<Integer> heard = new ArrayList<>();
        long before = used();

        Outcome outcome = ring.run(
                "b",
                new SourceText(
                        "b",
                        "vary breadth from 3 mm to 7.99 mm step 0.05 mm, thickness from 1.5 mm to 2.39 mm step 0.009 mm"
                                + " { weight(shank) }"),
                (done, total) -> heard.add(done));

        Answer.Varied varied = (Answer.Varied) outcome.answers().get(0);
        assertThat(varied.table().rows()).hasSize(9900);
        assertThat(varied.shown().rows()).hasSize(200);
        assertThat(varied.csv().lines()).hasSize(9901);
        assertThat(heard).isSorted().hasSizeGreaterThan(100).last().isEqualTo(9900);
        assertThat(used() - before).isLessThan(120L << 20);
    }

    private static long used() {
        System.gc();
        Runtime runtime = Runtime.getRuntime();
        return runtime.totalMemory() - runtime.freeMemory();
    }

    @Test
    void an_interrupt_ends_the_question_and_what_is_below_it_but_not_the_cell() {
        Workbench ring = made(RING);
        String cell = "height = 2 mm\nvary breadth from 3 mm to 7 mm step 0.001 mm { weight(shank) }\nshow height\n";

        Outcome outcome = ring.run("b", new SourceText("b", cell), (done, total) -> {
            if (done > 100) {
                Thread.currentThread().interrupt();
            }
        });

        assertThat(outcome.diagnostics()).extracting(Diagnostic::code).containsExactly("interrupted");
        assertThat(outcome.diagnostics().get(0).message()).matches("stopped on request after [0-9]+ of 4,001 variants");
        assertThat(outcome.answers()).isEmpty();
        assertThat(outcome.unanswered()).isEqualTo(2);
        assertThat(Thread.interrupted()).isFalse();
        assertThat(outcome.workbench()
                        .run("c", new SourceText("c", "show height"))
                        .answers())
                .hasSize(1);
    }

    @Test
    void varying_leaves_the_design_as_it_is() {
        Workbench ring = made(RING);
        Report before = ring.report();

        Outcome outcome =
                run(ring, "vary breadth\nwhat-if breadth = 5 mm\nfind largest breadth with weight(shank) < 6 g");

        assertThat(outcome.answers()).hasSize(5);
        assertThat(outcome.workbench().report()).isEqualTo(before);
    }

    @Test
    void an_option_and_a_figure_are_kept_and_asked_again_replaced() {
        Workbench ring = made(RING);
        ring = run(ring, "option \"wide\" { breadth = 5 mm }\nmeasured weight(shank) = 5 g")
                .workbench();
        ring = ring.run("c", new SourceText("c", "option \"wide\" { breadth = 6 mm }\nmeasured weight(shank) = 4.9 g"))
                .workbench();

        Table options = ((Answer.Tabled) run(ring, "show options").answers().get(0)).table();

        assertThat(options.columns()).extracting(Table.Column::name).containsExactly("what", "design", "wide");
        assertThat(options.rows().get(0)).containsExactly("breadth", "4.6 mm", "6 mm");
        assertThat(run(ring, "show weight(shank)").answers().get(0).plainText()).contains("measured 4.9 g");
    }

    @Test
    void handles_tell_where_they_may_move() {
        List<Handle> handles = made(RING).handles();

        assertThat(handles).extracting(Handle::name).containsExactly("breadth", "thickness");
        Handle breadth = handles.get(0);
        assertThat(breadth.value()).isEqualTo("4.6 mm");
        assertThat(breadth.because()).isEqualTo("level with the other ring");
        assertThat(breadth.stops()).hasSize(51).startsWith("3 mm", "3.1 mm").endsWith("8 mm");
        assertThat(handles.get(1).step()).isEqualTo("0.001 mm");
        assertThat(made("size = US 7 between US 4 and US 10").handles().get(0).stops())
                .startsWith("US 4", "US 4 1/4")
                .endsWith("US 10");
    }

    private static Workbench made(String text) {
        Outcome outcome = Workbench.empty().run("a", new SourceText("a", text));
        assertThat(outcome.diagnostics()).isEmpty();
        return outcome.workbench();
    }

    private static Outcome run(Workbench workbench, String text) {
        return workbench.run("b", new SourceText("b", text));
    }

    private static Answer.Varied vary(Workbench workbench, String text) {
        Outcome outcome = run(workbench, text);
        assertThat(outcome.diagnostics()).isEmpty();
        return (Answer.Varied) outcome.answers().get(0);
    }
}
