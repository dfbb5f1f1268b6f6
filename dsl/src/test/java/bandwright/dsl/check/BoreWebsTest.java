// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static bandwright.dsl.check.Bench.measured;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

class BoreWebsTest {
    private static String seats(String row, double hole) {
        return "cut of-" + row + " for " + row + " from shank { hole " + hole
                + " mm  clearance 0.01 mm  made at bench }\n";
    }

    private static String row(String name, String across) {
        return "stone-row " + name
                + " on shank { stone round diamond 1.5 mm  around full  count 30  sink 0.25 mm  across " + across
                + " }\n";
    }

    /** Upright bores side by side: from line to line less a bore of 1.52 mm; 0.1 mm is to stand. */
    @ParameterizedTest
    @CsvSource({"0.809, CAUTION", "0.811, PASSED"})
    void bores_of_two_rows_leave_a_web(double across, Verdict verdict) {
        String text = Bench.band(6, 2)
                + row("left", -across + " mm")
                + row("right", across + " mm")
                + seats("left", 0.8)
                + seats("right", 0.8);

        Finding found = two(text);
        assertThat(found.verdict()).isEqualTo(verdict);
        assertThat(measured(found)).isCloseTo(2 * across - 1.52, within(1e-3));
        assertThat(found.place()).isNotNull();
    }

    private static Finding two(String text) {
        List<Finding> found = Bench.of("bore-web", text).stream()
                .filter(finding -> finding.subjects().equals(List.of("left", "right")))
                .toList();
        assertThat(found).hasSize(1);
        return found.get(0);
    }

    @Test
    void rows_far_from_each_other_are_not_told() {
        String text = Bench.band(9, 2)
                + row("left", "-3 mm")
                + row("right", "3 mm")
                + seats("left", 0.8)
                + seats("right", 0.8);

        assertThat(Bench.of("bore-web", text))
                .allMatch(finding -> finding.subjects().size() == 1);
    }

    private static String dome(double hole) {
        return "profile dome = half-round(width: 6 mm, height: 3 mm)\n"
                + "band shank { finger ISO 57  profile dome  metal silver-925 }\n"
                + row("lights", "-1.2 mm, 1.2 mm") + seats("lights", hole);
    }

    /**
     * On a circle of radius 3 mm round the middle of the band stones at 1.2 mm lean by arcsin 0.4; their girdles leave room, and their axes meet at the
     * finger, as do holes of any size.
     */
    @Test
    void holes_of_two_lines_that_lean_towards_each_other_meet_at_the_finger() {
        Finding found = Bench.one("bore-web", dome(0.6));

        assertThat(found.verdict()).isEqualTo(Verdict.CAUTION);
        assertThat(measured(found)).isZero();
        assertThat(found.sentence()).isEqualTo("the bores of lights meet after bench work");
    }

    /** Set upright, the same two lines keep their holes apart. */
    @Test
    void upright_bores_do_not_meet() {
        String text = Bench.band(6, 3) + row("lights", "-1.2 mm, 1.2 mm") + seats("lights", 0.6);

        // What is left in a line: a pitch less 1.52 mm at the girdles.
        double radius = 57 / (2 * Math.PI) + 2.75;
        double pitch = 2 * radius * Math.sin(Math.PI / 30) - 1.52;
        Finding found = Bench.one("bore-web", text);
        assertThat(found.verdict()).isEqualTo(Verdict.PASSED);
        assertThat(measured(found)).isCloseTo(Math.min(2.4 - 1.52, pitch), within(0.02));
    }

    /** Of a long stone the bore is wider by the clearance on every side, and no more at its ends. */
    @Test
    void a_long_bore_is_wider_by_its_clearance() {
        String text = Bench.band(4, 2.5)
                + "stone-row lights on shank { stone baguette sapphire 4 mm by 1.5 mm  around 180 deg  spacing 0.337 mm  sink 0.25 mm }\n"
                + "cut seats for lights from shank { hole 0.8 mm  clearance 0.05 mm  made at bench }";

        assertThat(measured(Bench.one("bore-web", text))).isCloseTo(0.237, within(1e-3));
    }
}
