// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import java.util.List;
import java.util.Locale;
import java.util.Random;

import org.junit.jupiter.api.Test;

import bandwright.dsl.geometry.operation.HalfPlaneSlice;
import bandwright.dsl.geometry.operation.SelfCrossing;
import bandwright.dsl.geometry.plane.Moments;
import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.geometry.plane.Region;
import bandwright.dsl.geometry.plane.RegionBoolean;
import bandwright.dsl.geometry.solid.MeshMeasures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

/** Channels: slots that follow a row, with notches for its girdles. */
class ChannelTest {
    private static final double INNER = 57 / (2 * Math.PI);
    private static final double OUTER = INNER + 2.4;
    private static final double GIRDLE = OUTER - 0.6;
    private static final double WHOLE = Math.PI * (OUTER * OUTER - INNER * INNER) * 5;
    private static final String FLAT = """
            profile slab = rectangle(width: 5 mm, height: 2.4 mm)
            band shank { finger ISO 57  profile slab  metal silver-925 }
            """;

    private static String text(String row, String seats, String channel) {
        String spacing = row.startsWith("count") ? "" : "spacing at least 0.1 mm ";
        return FLAT + "stone-row lights on shank { stone round diamond 1.5 mm  sink 0.6 mm  " + spacing + row
                + " }\ncut slot for lights from shank { " + seats
                + " channel { width 90 %  notch 0.1 mm  lip 0.3 mm  floor 1 mm " + channel + " } }";
    }

    private static double taken(Ring ring) {
        sound(ring.body("shank"));
        return WHOLE - ring.body("shank").volumeMm3();
    }

    private static void sound(Body body) {
        assertThat(SelfCrossing.depth(body.mesh())).isLessThan(1e-6);
        assertThat(MeshMeasures.closednessFault(body.mesh())).isEmpty();
        assertThat(body.volumeMm3()).isCloseTo(MeshMeasures.volume(body.mesh()), withinPercentage(0.01));
    }

    /** What a whole turn of the slot takes, closed form: the area of a rectangle with its notches times the way of its middle. */
    private static double turn(double bottom) {
        double slot = 1.35 * Math.PI * (OUTER * OUTER - bottom * bottom);
        double in = 0.1;
        double inWall = 0.75 * Math.sqrt(1 - 0.9 * 0.9);
        double high = 0.03 * 1.5 + Math.sqrt(GIRDLE * GIRDLE + inWall * inWall) - GIRDLE;
        double down = in * Math.tan(Math.toRadians(40.7));
        double up = in * Math.tan(Math.toRadians(34));
        double notch = in * high * (GIRDLE + high / 2)
                + in * down / 2 * (GIRDLE - down / 3)
                + in * up / 2 * (GIRDLE + high + up / 3);
        return slot + 2 * 2 * Math.PI * notch;
    }

    @Test
    void a_full_channel_holds_its_area_times_the_way_round() {
        Ring ring = TextRing.of(text("", "", ""));
        assertThat(taken(ring)).isCloseTo(turn(INNER + 1), within(1e-9));
        assertThat(ring.body("shank").section().isTurned()).isTrue();
    }

    @Test
    void on_an_arc_it_takes_its_share() {
        Ring ring = TextRing.of(text("around 120 deg centred 30 deg", "", ""));
        StoneLayout layout = ring.layout("lights");
        double angle = (layout.perLine() - 1) * layout.stepRadians() + 2 * Math.atan(0.75 / GIRDLE);
        assertThat(taken(ring)).isCloseTo(turn(INNER + 1) * angle / (2 * Math.PI), withinPercentage(0.01));
    }

    @Test
    void with_bars_it_goes_down_to_the_finger_between_them() {
        Ring ring = TextRing.of(text("count 36", "", "bars every 3"));
        double arm = Math.min(0.5 / (INNER + 1), Math.PI / 72);
        double bar = 1.35 * arm * ((INNER + 1) * (INNER + 1) - INNER * INNER);
        assertThat(taken(ring)).isCloseTo(turn(INNER) - 12 * bar, withinPercentage(0.01));
        double at = 2.5 * Math.PI / 18;
        assertThat(HalfPlaneSlice.of(ring.body("shank").mesh(), at).pieces()).hasSize(1);
        assertThat(HalfPlaneSlice.of(ring.body("shank").mesh(), at - 0.06).pieces())
                .hasSize(2);
        assertThat(ring.body("shank").pieces()).isEqualTo(1);
    }

    @Test
    void a_hole_leads_from_the_channel_to_the_finger() {
        double without = taken(TextRing.of(text("count 36", "", "")));
        double with = taken(TextRing.of(text("count 36", "hole 0.6 mm", "")));
        // A cylinder between two cylinders: r² π times the mean way between them, to the first order of its width.
        double flat = Math.PI * 0.09 * 36;
        double bend = flat * 0.09 / 8 * (1 / INNER - 1 / (INNER + 1));
        assertThat(with - without).isCloseTo(flat + bend, withinPercentage(0.02));
    }

    /** The girdles of all stones lie within slot and notches. */
    @Test
    void girdles_have_their_place() {
        for (String stone : List.of(
                "round diamond 1.5 mm",
                "princess diamond 1.5 mm",
                "oval diamond 2 mm by 1.5 mm",
                "baguette diamond 2.6 mm by 1.5 mm")) {
            Ring ring = TextRing.of(text("", "clearance 0.01 mm", "")
                    .replace("round diamond 1.5 mm", stone)
                    .replace("height: 2.4", "height: 3"));
            Region metal = ring.body("shank").section().region();
            StoneLayout layout = ring.layout("lights");
            Girdle girdle = Girdle.of(layout.row());
            double level = layout.lines().get(0).girdleRadius();
            for (int i = 0; i < 360; i++) {
                Point point = girdle.point(i, 360);
                for (double up : new double[] {0, 0.045}) {
                    double out = Math.hypot(level + up, point.y());
                    Region here =
                            Region.of(Outline.rectangle(point.x() - 1e-3, out - 1e-3, point.x() + 1e-3, out + 1e-3));
                    Moments inside = RegionBoolean.intersection(metal, here).moments();
                    assertThat(inside.area()).as("%s at %d", stone, i).isLessThan(2.1e-6);
                }
            }
        }
    }

    @Test
    void any_channel_is_sound() {
        for (int seed = 0; seed < 24; seed++) {
            Random random = new Random(seed);
            String text = random(random);
            Ring ring = TextRing.of(text);
            Body shank = ring.body("shank");
            assertThat(SelfCrossing.depth(shank.mesh()))
                    .as("crossing in %d", seed)
                    .isLessThan(1e-6);
            assertThat(MeshMeasures.closednessFault(shank.mesh())).as(text).isEmpty();
            assertThat(shank.pieces()).as(text).isEqualTo(1);
            assertThat(shank.volumeMm3()).as(text).isCloseTo(MeshMeasures.volume(shank.mesh()), withinPercentage(0.1));
        }
    }

    private static String random(Random random) {
        String cut = List.of("princess", "baguette", "oval", "round").get(random.nextInt(4));
        double across = between(random, 1.2, 1.8);
        double around = cut.equals("round") ? across : between(random, 1.2, 2);
        boolean bars = random.nextInt(3) == 0;
        boolean two = random.nextInt(4) == 0;
        return String.format(
                Locale.ROOT,
                """
                profile slab = d-shape(width: %.3f mm, height: 3.2 mm, side: 2.5 mm)
                profile slim = d-shape(width: %.3f mm, height: 3.1 mm, side: 2.6 mm)
                band shank { finger ISO 57  profile %s  metal silver-925 }
                stone-row lights on shank { stone %s diamond %.3f mm%s %s spacing at least %.3f mm  sink 0.6 mm across %s }
                cut slot for lights from shank { clearance %.3f mm %s channel { width %.1f %% notch 0.15 mm lip 0.1 mm floor %.2f mm %s} }
                %s
                """,
                2 * across + 6,
                2 * across + 5.6,
                random.nextInt(3) == 0 ? "slab at 0 deg, slim at 180 deg" : "slab",
                cut,
                around,
                cut.equals("round") ? "" : String.format(Locale.ROOT, " by %.3f mm", across),
                random.nextInt(3) == 0 ? "around 150 deg centred 40 deg" : "",
                between(random, 0.1, 0.6),
                two ? "-1.3 mm, 1.3 mm" : random.nextInt(3) == 0 ? "0.3 mm" : "0 mm",
                between(random, 0, 0.04),
                random.nextInt(3) == 0 && !bars ? "hole 0.6 mm" : "",
                between(random, 88, 95),
                between(random, 0.6, 1.1),
                bars ? "bars every " + (2 + random.nextInt(3)) + " " : "",
                random.nextInt(4) == 0
                        ? "prongs pins for lights on shank { diameter 0.5 mm rise 0.3 mm root 0.5 mm across "
                                + String.format(Locale.ROOT, "%.3f mm }", across / 2)
                        : "");
    }

    private static double between(Random random, double low, double high) {
        return low + (high - low) * random.nextDouble();
    }
}
