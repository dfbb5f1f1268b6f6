// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;

import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.view.Chart;
import bandwright.dsl.view.image.Pixels;

import static org.assertj.core.api.Assertions.assertThat;

class ChartDrawingTest {
    @Test
    void ticks_are_one_two_or_five_apart_and_inside() {
        Random random = new Random(11);
        for (int i = 0; i < 2000; i++) {
            double low = (random.nextDouble() - 0.5) * StrictMath.pow(10, random.nextInt(6) - 2);
            double high = low + random.nextDouble() * StrictMath.pow(10, random.nextInt(6) - 3) + 1e-6;
            Ticks inside = Ticks.inside(low, high, 2 + random.nextInt(15));
            Ticks around = Ticks.around(low, high, 5);

            assertThat(inside.step().unscaledValue().intValue()).isIn(1, 2, 5);
            double hair = 1e-8 * (high - low);
            assertThat(inside.values()).allSatisfy(tick -> assertThat(tick).isBetween(low - hair, high + hair));
            assertThat(around.low()).isLessThanOrEqualTo(low + hair);
            assertThat(around.high()).isGreaterThanOrEqualTo(high - hair);
            assertThat(around.values()).hasSizeBetween(2, 8).hasSameSizeAs(around.labels());
        }
    }

    @Test
    void ticks_have_the_decimals_of_their_step() {
        assertThat(Ticks.inside(4, 10, 13).labels()).startsWith("4.0", "4.5").endsWith("10.0");
        assertThat(Ticks.inside(0, 4000, 5).labels()).containsExactly("0", "1000", "2000", "3000", "4000");
    }

    @Test
    void no_two_texts_touch_and_all_is_on_the_paper() {
        Random random = new Random(5);
        for (int i = 0; i < 200; i++) {
            Drawing drawing = ChartDrawing.of(chart(random));
            List<Mark.Label> labels = drawing.marks().stream()
                    .filter(Mark.Label.class::isInstance)
                    .map(Mark.Label.class::cast)
                    .toList();
            for (Mark.Label label : labels) {
                Bounds own = label.bounds();
                assertThat(own.minX()).isGreaterThanOrEqualTo(drawing.box().minX());
                assertThat(own.maxX()).isLessThanOrEqualTo(drawing.box().maxX());
                assertThat(own.minY()).isGreaterThanOrEqualTo(drawing.box().minY());
                assertThat(labels.stream().filter(other -> !other.equals(label) && touch(own, other.bounds())))
                        .as("%s in a chart of %s", label.text(), drawing.title())
                        .isEmpty();
            }
        }
    }

    private static boolean touch(Bounds a, Bounds b) {
        return a.minX() < b.maxX() && b.minX() < a.maxX() && a.minY() < b.maxY() && b.minY() < a.maxY();
    }

    private static Chart chart(Random random) {
        int places = 1 + random.nextInt(30);
        boolean words = random.nextInt(3) == 0;
        double size = StrictMath.pow(10, random.nextInt(7) - 3);
        List<String> labels = new ArrayList<>();
        List<Double> numbers = new ArrayList<>();
        for (int i = 0; i < places; i++) {
            double number = size * (random.nextDouble() + i);
            labels.add(words ? "white-gold-585-recipe-" + i : ChartWords.number(number));
            numbers.add(number);
        }
        List<Chart.Panel> panels = new ArrayList<>();
        int lines = 1 + random.nextInt(9);
        for (int panel = 0; panel <= random.nextInt(3); panel++) {
            List<Chart.Series> series = new ArrayList<>();
            for (int line = 0; line < lines; line++) {
                series.add(new Chart.Series(lines == 1 ? "" : "line " + line, values(random, places)));
            }
            panels.add(new Chart.Panel("measure " + panel, "g", series));
        }
        Chart.Axis across = new Chart.Axis("breadth", "mm", labels, words ? List.of() : numbers);
        return new Chart("Variants", across, panels, List.of("A note."));
    }

    private static List<Double> values(Random random, int count) {
        List<Double> values = new ArrayList<>();
        double size = StrictMath.pow(10, random.nextInt(9) - 4);
        for (int i = 0; i < count; i++) {
            boolean missing = random.nextInt(8) == 0;
            values.add(missing ? Double.NaN : size * (random.nextDouble() - 0.3));
        }
        return values;
    }

    @Test
    void lines_are_told_apart_by_dash_or_marker() {
        for (LineStyle style : LineStyle.ALL) {
            assertThat(LineStyle.ALL.stream().filter(other -> other.dash().equals(style.dash())))
                    .hasSize(1);
        }
    }

    /** A line of five and a half millimetres with a corner: dashes of two and gaps of one run on round it. */
    @Test
    void dashes_in_pixels_run_on_round_corners() {
        LineStyle dashed = new LineStyle(0x000000, true, 3, List.of(2.0, 1.0));
        Mark line = dashed.line(List.of(new Point(0, 0), new Point(2.5, 0), new Point(2.5, 3)));
        Drawing drawing = new Drawing("", "", new Bounds(-1, -1, 4, 4), 1, List.of(line));
        Pixels pixels = DrawingPainter.pixels(drawing, 500);

        assertThat(pixels.at(200, 400)).as("in the first dash").isEqualTo(0x000000);
        assertThat(pixels.at(325, 400)).as("in the gap before the corner").isEqualTo(0xffffff);
        assertThat(pixels.at(350, 370)).as("in the gap after the corner").isEqualTo(0xffffff);
        assertThat(pixels.at(350, 250)).as("in the second dash").isEqualTo(0x000000);
    }
}
