// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.explain;

import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import bandwright.dsl.Answer;
import bandwright.dsl.Outcome;
import bandwright.dsl.Workbench;
import bandwright.dsl.source.SourceText;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

/** What an explanation shows is worked out again from its own text: it must come to the value it explains. */
class ExplainedNumbersTest {
    private static final String FORMS = """
            profile dome = d-shape(width: 6 mm, height: 2.6 mm)
            profile slim = half-round(width: 5 mm, height: 1.8 mm)
            profile even = flat(width: 5 mm, height: 2.2 mm)
            """;
    private static final String FLAT = FORMS + "band shank { finger ISO 54  profile even  metal silver-925 }\n";
    private static final String DOMED = FORMS + "band shank { finger ISO 54  profile dome  metal silver-925 }\n";
    private static final String CHANGING =
            FORMS + "band shank { finger ISO 54  profile dome at 0 deg, slim at 180 deg  metal silver-925 }\n";

    /** Three decimals are shown; a sum of some of them is off by so much at most. */
    private static final double ROUNDED = 0.003;

    private static final Pattern NUMBER = Pattern.compile("-?\\d+(?:\\.\\d+)?");

    static Stream<String> bands() {
        return Stream.of(FLAT, DOMED, CHANGING);
    }

    static Stream<String> rows() {
        List<String> stones = List.of(
                "round diamond 1.5 mm",
                "princess diamond 1.6 mm",
                "baguette sapphire 1.2 mm by 1.8 mm",
                "oval ruby 2 mm by 1.5 mm");
        List<String> places = List.of(
                "around full  spacing at least 0.2 mm",
                "around 120 deg  spacing at least 0.2 mm",
                "around 90 deg centred 40 deg  count 5  across 0.8 mm",
                "around full  count 20  across -1 mm, 1 mm");
        return bands().flatMap(band -> stones.stream()
                .flatMap(stone -> places.stream()
                        .map(place -> band + "stone-row lights on shank { stone " + stone + "  " + place
                                + "  sink 0.3 mm }\n")));
    }

    static Stream<String> parts() {
        List<String> cuts = List.of(
                "cut trough from shank { width 1.4 mm  depth 0.7 mm  keep stripe in red-gold-585  let-in from fingertip leaving collar }",
                "cut trough from shank { width 1.4 mm  depth 0.7 mm  around 100 deg  ends round  keep stripe in red-gold-585  fit 0.05 mm  let-in cast }",
                "cut trough from shank { width 1 mm  depth 0.4 mm  inside }",
                "cut trough from shank { width 1 mm  depth through  leaving left, right }");
        String row = """
                stone-row lights on shank { stone round diamond 1.2 mm  around 80 deg  spacing at least 0.2 mm  sink 0.3 mm }
                cut seats for lights from shank { hole 0.6 mm  clearance 0.01 mm }
                prongs pins for lights on shank { diameter 0.4 mm  rise 0.2 mm  across 0.4 mm }
                """;
        return bands().flatMap(
                        band -> Stream.concat(cuts.stream().map(cut -> band + cut + "\n"), Stream.of(band + row)));
    }

    @ParameterizedTest
    @MethodSource("rows")
    void a_rows_formulas_come_to_what_is_measured(String text) {
        String gap = explained(text, "gap(lights)");
        if (gap.contains("2 x (radius")) {
            List<Double> of = numbers(line(gap, "2 x (radius").split("\\) = 2 x \\(", 2)[1]);
            assertThat(2 * (of.get(0) * sine(of.get(1)) - of.get(2) * cosine(of.get(3))))
                    .as(gap)
                    .isCloseTo(value(gap), within(ROUNDED));
        }
        String pitch = explained(text, "pitch(lights)");
        if (pitch.contains("2 x radius")) {
            List<Double> of = numbers(line(pitch, "2 x radius").split(" = 2 x ", 2)[1]);
            assertThat(2 * of.get(0) * sine(of.get(1))).as(pitch).isCloseTo(value(pitch), within(ROUNDED));
        }
        String count = explained(text, "count(lights)");
        if (count.contains("would leave")) {
            List<Double> of = numbers(line(count, "would leave"));
            assertThat(of.get(1)).as(count).isEqualTo(value(count));
            assertThat(of.get(2)).as(count).isGreaterThanOrEqualTo(of.get(0) - ROUNDED);
            assertThat(of.get(4)).as(count).isLessThan(of.get(0));
        }
        String depth = explained(text, "depth-left(lights)");
        if (depth.contains("radius of the girdles")) {
            double above = numbers(line(depth, "radius of the girdles")).get(1);
            List<Double> pavilion = numbers(line(depth, "less the pavilion"));
            double towards = pavilion.size() > 2 ? pavilion.get(2) : 1;
            assertThat(above - pavilion.get(1) * towards).as(depth).isCloseTo(value(depth), within(ROUNDED));
        }
        String carats = explained(text, "carats(lights)");
        assertThat(numbers(line(carats, " stones x ")).get(2)).as(carats).isEqualTo(value(carats));
    }

    @ParameterizedTest
    @MethodSource("parts")
    void what_is_turned_taken_and_added_comes_to_the_volume(String text) {
        for (String part : List.of("shank", "stripe", "collar", "left", "right")) {
            if (part.equals("shank") ? text.contains("leaving left") : !text.contains(part)) {
                continue;
            }
            String told = explained(text, "volume(" + part + ")");
            double sum = 0;
            for (String line : told.lines().map(String::strip).toList()) {
                // What is in brackets is the source.
                List<Double> of = numbers(line.replaceAll("\\[.*", ""));
                if (line.startsWith("the band") || line.startsWith("what ")) {
                    sum = of.get(of.size() - 1);
                    if (line.contains(" x 2 pi x ")) {
                        double turned = of.get(of.size() - 4) * 2 * Math.PI * of.get(of.size() - 2);
                        assertThat(turned).as(told).isCloseTo(sum, within(sum * 1e-3));
                    }
                } else if (line.startsWith("grooves take") || line.startsWith("seats take")) {
                    sum -= of.get(0);
                } else if (line.startsWith("pins add")) {
                    sum += of.get(0);
                }
            }
            assertThat(sum).as(told).isCloseTo(value(told), within(ROUNDED));
        }
    }

    private static String explained(String text, String asked) {
        Outcome outcome = Workbench.empty().run("cell", new SourceText("cell 1", text + "explain " + asked));
        assertThat(outcome.diagnostics()).as(text + asked).isEmpty();
        Answer answer = outcome.answers().get(outcome.answers().size() - 1);
        return answer.plainText();
    }

    private static String line(String told, String part) {
        return told.lines().filter(line -> line.contains(part)).findFirst().orElseThrow();
    }

    /** What is explained: the number at the end of the first line. */
    private static double value(String told) {
        return numbers(told.lines().findFirst().orElseThrow().split(" = ", 2)[1])
                .get(0);
    }

    private static List<Double> numbers(String text) {
        // Units hold digits too.
        return NUMBER.matcher(text.replace("mm^2", "").replace("mm^3", ""))
                .results()
                .map(MatchResult::group)
                .map(Double::valueOf)
                .toList();
    }

    private static double sine(double degrees) {
        return Math.sin(Math.toRadians(degrees));
    }

    private static double cosine(double degrees) {
        return Math.cos(Math.toRadians(degrees));
    }
}
