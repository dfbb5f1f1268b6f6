// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;

import org.junit.jupiter.api.Test;

import bandwright.dsl.geometry.operation.SelfCrossing;
import bandwright.dsl.geometry.solid.MeshMeasures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

/** Seats of stones that are not round. */
class AnySeatTest {
    private static final double INNER = 57 / (2 * Math.PI);
    private static final double OUTER = INNER + 2.4;
    private static final double GIRDLE = OUTER - 0.3;
    private static final String FLAT = """
            profile slab = rectangle(width: 5 mm, height: 2.4 mm)
            band shank { finger ISO 57  profile slab  metal silver-925 }
            """;
    private static final String HOLE = "hole 0.8 mm  bearing 0.5 mm  clearance 0.05 mm";
    private static final double WHOLE = Math.PI * (OUTER * OUTER - INNER * INNER) * 5;

    private static Ring ring(String stone, String seats) {
        return TextRing.of(FLAT + "stone-row lights on shank { stone " + stone + "  count 12  sink 0.3 mm }\n"
                + "cut seats for lights from shank { " + seats + " }");
    }

    /** What one seat takes. */
    private static double taken(Ring ring) {
        Body shank = ring.body("shank");
        sound(shank);
        return (WHOLE - shank.volumeMm3()) / 12;
    }

    private static void sound(Body body) {
        assertThat(MeshMeasures.closednessFault(body.mesh())).as(body.name()).isEmpty();
        assertThat(body.pieces()).isEqualTo(1);
        assertThat(body.volumeMm3()).isCloseTo(MeshMeasures.volume(body.mesh()), withinPercentage(0.01));
    }

    private static double simpson(double from, double to, DoubleUnaryOperator function) {
        int steps = 2000;
        double width = (to - from) / steps;
        double sum = function.applyAsDouble(from) + function.applyAsDouble(to);
        for (int i = 1; i < steps; i++) {
            sum += (i % 2 == 0 ? 2 : 4) * function.applyAsDouble(from + i * width);
        }
        return sum * width / 3;
    }

    /** From the girdle to the round surface, over a shape half as wide as told at a place along the row. */
    private static double bore(double half, DoubleUnaryOperator width) {
        return simpson(-half, half, y -> 2 * width.applyAsDouble(y) * (Math.sqrt(OUTER * OUTER - y * y) - GIRDLE));
    }

    /** From the finger to the foot of the cone. */
    private static double hole(double radius, double cone) {
        return simpson(
                -radius,
                radius,
                y -> 2 * Math.sqrt(radius * radius - y * y) * (GIRDLE - cone - Math.sqrt(INNER * INNER - y * y)));
    }

    /** Half a side seen from the axis over all directions: the integral of the outline's distance, of a rectangle. */
    private static double distances(double a, double b) {
        double corner = Math.atan2(b, a);
        double rest = Math.PI / 2 - corner;
        return 4
                * (a * Math.log(1 / Math.cos(corner) + Math.tan(corner))
                        + b * Math.log(1 / Math.cos(rest) + Math.tan(rest)));
    }

    @Test
    void a_rectangular_seat_holds_prism_cone_and_hole() {
        for (String stone : List.of("princess diamond 1.6 mm", "baguette diamond 1.4 mm by 2.2 mm")) {
            double around = stone.startsWith("princess") ? 0.8 : 0.7;
            double across = stone.startsWith("princess") ? 0.8 : 1.1;
            double r = 0.4;
            double cone = 0.5 / 3 * (Math.PI * r * r + r * distances(across, around) / 2 + 4 * across * around);
            double expected = bore(around + 0.05, y -> across + 0.05) + cone + hole(r, 0.5);
            assertThat(taken(ring(stone, HOLE))).as(stone).isCloseTo(expected, withinPercentage(0.03));
        }
    }

    @Test
    void an_oval_seat_holds_ellipses() {
        double a = 1.1;
        double b = 0.7;
        double r = 0.4;
        double cone = Math.PI * 0.5 * (r * r + r * (a - r + b - r) / 2 + (a - r) * (b - r) / 3);
        double expected =
                bore(b + 0.05, y -> (a + 0.05) * Math.sqrt(1 - y * y / (b + 0.05) / (b + 0.05))) + cone + hole(r, 0.5);
        assertThat(taken(ring("oval diamond 1.4 mm by 2.2 mm", HOLE))).isCloseTo(expected, withinPercentage(0.03));
    }

    /** A frustum of rectangles narrowed by the same on every side, and the flat floor as wide as the hole. */
    @Test
    void without_a_bearing_a_rectangular_stone_sits_in_a_pocket() {
        double a = 1.1;
        double b = 0.7;
        double r = 0.4;
        double narrowed = b - r * 1.02;
        double depth = Math.max(Math.tan(Math.toRadians(60)) * (b - r), 0.45 * 1.4);
        double low = 4 * (a - narrowed) * (b - narrowed);
        double middle = 4 * (a - narrowed / 2) * (b - narrowed / 2);
        double pocket = depth / 6 * (low + 4 * middle + 4 * a * b);
        double expected = bore(b, y -> a) + pocket + hole(r, depth);
        assertThat(taken(ring("baguette diamond 1.4 mm by 2.2 mm", "hole 0.8 mm")))
                .isCloseTo(expected, withinPercentage(0.03));
    }

    @Test
    void any_stones_sit_in_any_band() {
        for (int seed = 0; seed < 24; seed++) {
            Random random = new Random(seed);
            Ring ring = TextRing.of(text(random));
            Body shank = ring.body("shank");
            assertThat(SelfCrossing.depth(shank.mesh()))
                    .as("crossing in %d", seed)
                    .isLessThan(1e-6);
            assertThat(MeshMeasures.closednessFault(shank.mesh()))
                    .as("ring %d", seed)
                    .isEmpty();
            assertThat(shank.volumeMm3())
                    .as("volume of %d", seed)
                    .isCloseTo(MeshMeasures.volume(shank.mesh()), withinPercentage(0.1));
        }
    }

    private static String text(Random random) {
        double around = between(random, 1.2, 2.4);
        double across = between(random, 1.2, 2.4);
        String cut = List.of("princess", "baguette", "oval").get(random.nextInt(3));
        double hole = between(random, 0.3, 0.85) * Math.min(around, across);
        String changing = random.nextInt(4) == 0 ? "slab at 0 deg, slim at 180 deg" : "slab";
        return String.format(
                Locale.ROOT,
                """
                profile slab = d-shape(width: %.3f mm, height: 2.4 mm, side: 1.6 mm)
                profile slim = d-shape(width: %.3f mm, height: 2.2 mm, side: 1.7 mm)
                band shank { finger ISO 57  profile %s  metal silver-925 }
                stone-row lights on shank { stone %s diamond %.3f mm by %.3f mm %s spacing at least %.3f mm  sink %.3f mm across %.3f mm %s}
                cut seats for lights from shank { hole %.3f mm clearance %.3f mm %s %s}
                %s
                """,
                across + 3,
                across + 2.6,
                changing,
                cut,
                around,
                across,
                random.nextInt(3) == 0 ? "around 150 deg centred 40 deg" : "",
                between(random, 0.1, 0.6),
                between(random, 0.1, 0.4),
                random.nextInt(3) == 0 ? 0.3 : 0,
                random.nextInt(5) == 0 ? "upright " : "",
                hole,
                between(random, 0, 0.04),
                random.nextBoolean() ? "bearing 0.5 mm" : "",
                random.nextInt(3) == 0 ? "deburr 0.1 mm " : "",
                random.nextInt(3) == 0
                        ? "prongs pins for lights on shank { diameter 0.6 mm rise 0.3 mm root 0.5 mm across "
                                + String.format(Locale.ROOT, "%.3f mm }", across / 2)
                        : "");
    }

    private static double between(Random random, double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    @Test
    void a_pin_covers_the_corner_of_a_rectangle_and_the_edge_of_an_oval_by_its_reach() {
        for (String cut :
                List.of("princess diamond 1.5 mm", "baguette diamond 1.5 mm by 2 mm", "oval diamond 1.5 mm by 2 mm")) {
            Ring ring = TextRing.of(FLAT + "stone-row lights on shank { stone " + cut
                    + "  spacing at least 0.2 mm  sink 0.3 mm }\n"
                    + "prongs pins for lights on shank { diameter 0.6 mm rise 0.3 mm root 0.5 mm reach 0.1 mm }");
            StoneLayout layout = ring.layout("lights");
            double across = ring.pinAcross(ring.design().prongs().get(0), 0);
            Girdle girdle = Girdle.of(layout.row());
            double nearest = Double.POSITIVE_INFINITY;
            for (int i = 0; i < 40000; i++) {
                var point = girdle.point(i, 40000);
                nearest = Math.min(nearest, Math.hypot(point.x() - across, point.y() - layout.halfWay(0)));
            }
            assertThat(0.3 - nearest).as(cut).isCloseTo(0.1, within(1e-6));
        }
    }

    @Test
    void the_gap_between_lines_is_that_of_sides_and_of_ends() {
        Ring boxes = TextRing.of(FLAT + "stone-row lights on shank { stone baguette diamond 1.5 mm by 1.8 mm  count 16"
                + "  sink 0.3 mm  across -1.1 mm, 1.1 mm }");
        assertThat(boxes.layout("lights").gapMm().orElseThrow()).isCloseTo(2.2 - 1.8, within(1e-9));
        Ring ovals = TextRing.of(FLAT + "stone-row lights on shank { stone oval diamond 1.5 mm by 1.8 mm  count 16"
                + "  sink 0.3 mm  across -1.1 mm, 1.1 mm }");
        assertThat(ovals.layout("lights").gapMm().orElseThrow()).isCloseTo(2.2 - 1.8, within(1e-9));
    }
}
