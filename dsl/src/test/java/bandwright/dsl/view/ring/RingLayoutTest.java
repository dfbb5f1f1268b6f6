// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.ring;

import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;

import bandwright.dsl.construct.Ring;
import bandwright.dsl.construct.TextRing;
import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.view.GoldenView;
import bandwright.dsl.view.drawing.Drawing;
import bandwright.dsl.view.drawing.DrawingPainter;
import bandwright.dsl.view.drawing.Labels;
import bandwright.dsl.view.drawing.Layout;
import bandwright.dsl.view.drawing.LayoutDrawing;
import bandwright.dsl.view.drawing.SvgWriter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

class RingLayoutTest {
    private static final String SET = """
            profile bar = flat(width: 5 mm, height: 1.9 mm)
            band shank { finger ISO 57  profile bar  metal white-gold-585-pd }
            cut trough from shank {
              width 1.9 mm
              depth 1 mm
              keep stripe in red-gold-585
              let-in from fingertip leaving collar
            }
            stone-row lights on stripe { stone round diamond 1.5 mm  around full  count 40  sink 0.25 mm }
            cut seats for lights from stripe, shank { hole 0.8 mm  bearing 0.35 mm  clearance 0.01 mm }
            prongs pins for lights on stripe { diameter 0.55 mm  rise 0.28 mm  root 0.6 mm  across 0.42 mm }
            """;

    @Test
    void a_full_row_on_a_stripe_looks_as_it_did() {
        Drawing drawing = LayoutDrawing.of(RingLayout.of(TextRing.of(SET), "lights"), 4);

        GoldenView.check("layout-full.svg", SvgWriter.write(drawing));
        GoldenView.check("layout-full.pixels", DrawingPainter.pixels(drawing, 800));
    }

    @Test
    void a_row_on_a_band_that_changes_looks_as_it_did() {
        Ring ring = TextRing.of("""
                profile bar = flat(width: 7 mm, height: 2.2 mm)
                profile slim = flat(width: 4 mm, height: 1.8 mm)
                band shank { finger ISO 54  profile bar at 0 deg, slim at 180 deg  metal yellow-gold-750 }
                cut furrow from shank { width 1.4 mm  depth 0.5 mm  across -2 mm  around 90 deg centred 20 deg }
                stone-row lights on shank {
                  stone baguette sapphire 2.4 mm by 1.5 mm
                  around 120 deg
                  spacing at least 0.12 mm
                  sink 0.4 mm
                  across 0.8 mm
                }
                """);

        GoldenView.check("layout-arc.svg", SvgWriter.write(LayoutDrawing.of(RingLayout.of(ring, "lights"), 4)));
    }

    /** A slot's area: its width times its length between the feet of its ends, and a circle. The strip is unrolled 9.072 + 2 mm out. */
    @Test
    void round_ends_are_drawn_round() {
        Ring ring = TextRing.of("""
                profile bar = flat(width: 7 mm, height: 2 mm)
                band shank { finger ISO 57  profile bar  metal silver-925 }
                cut slot from shank { width 1.4 mm  depth 0.5 mm  across -2 mm  around 40 deg  ends round }
                stone-row lights on shank { stone round diamond 1.5 mm  around full  count 20  sink 0.3 mm  across 1.5 mm }
                """);

        Layout layout = RingLayout.of(ring, "lights");

        double length = 40 * StrictMath.PI / 180 * (57 / (2 * StrictMath.PI) + 2);
        double area = 1.4 * (length - 1.4) + StrictMath.PI * 0.7 * 0.7;
        assertThat(layout.grounds().get(1).region().moments().area()).isCloseTo(area, within(1e-9));
        assertThat(SvgWriter.write(LayoutDrawing.of(layout, 1))).contains("A0.7 0.7");
    }

    /** A court-shaped crown of a d-shape: sides 0.5 mm high, floor 0.9 mm out: the collar's other joint comes up through the dome. */
    @Test
    void a_collar_s_joints_are_drawn_where_they_come_up() {
        String low =
                SET.replace("flat(width: 5 mm, height: 1.9 mm)", "d-shape(width: 5 mm, height: 1.9 mm, side: 0.5 mm)");
        Layout dome = RingLayout.of(TextRing.of(low), "lights");
        Layout flat = RingLayout.of(TextRing.of(SET), "lights");

        assertThat(flat.joints()).extracting(Layout.Joint::name).containsExactly("joint of collar");
        assertThat(flat.joints().get(0).line().get(0).y()).isCloseTo(0.95, within(1e-9));
        // The dome through (0, 1.9) and (2.5, 0.5): its radius, and where it is 0.9 mm high.
        double rise = 1.4;
        double radius = (2.5 * 2.5 + rise * rise) / (2 * rise);
        double across = StrictMath.sqrt(radius * radius - (radius - 1) * (radius - 1));
        assertThat(dome.joints()).hasSize(2);
        assertThat(dome.joints().get(1).line().get(0).y()).isCloseTo(across, within(1e-9));
    }

    @Test
    void seams_of_halves_are_drawn() {
        String halves = SET.replace("let-in from fingertip leaving collar", "let-in in halves at 9 deg");

        Layout layout = RingLayout.of(TextRing.of(halves), "lights");

        assertThat(layout.joints()).extracting(Layout.Joint::name).containsOnly("seams of stripe");
        assertThat(layout.joints()).hasSize(2);
        double apart = layout.joints().get(1).line().get(0).x()
                - layout.joints().get(0).line().get(0).x();
        assertThat(Math.abs(apart)).isCloseTo((layout.toMm() - layout.fromMm()) / 2, within(1e-9));
    }

    @Test
    void the_strip_is_as_long_as_the_surface_is_round() {
        Layout layout = RingLayout.of(TextRing.of(SET), "lights");

        // 57 mm round the finger, 1.9 mm of metal out from it.
        double round = 57 + 2 * StrictMath.PI * 1.9;
        assertThat(layout.toMm() - layout.fromMm()).isCloseTo(round, within(1e-9));
        assertThat(360 / layout.degreesPerMm()).isCloseTo(round, within(1e-9));
        assertThat(layout.stones()).hasSize(40);
        assertThat(layout.pins()).hasSize(80);
    }

    @Test
    void stones_and_pins_lie_on_the_strip_whatever_the_row() {
        Random random = new Random(20261127);
        for (int i = 0; i < 60; i++) {
            Ring ring = TextRing.of(row(random));
            Layout layout = RingLayout.of(ring, "lights");

            assertThat(layout.stones()).hasSize(ring.layout("lights").count());
            // Of staggered rows all round, a stone may lie across the strip's ends.
            for (Layout.Stone stone : layout.stones()) {
                assertThat(stone.centre().x()).isBetween(layout.fromMm() - 1e-6, layout.toMm() + 1e-6);
            }
            for (Outline pin : layout.pins()) {
                Bounds box = pin.bounds();
                assertThat((box.minX() + box.maxX()) / 2).isBetween(layout.fromMm() - 1e-6, layout.toMm() + 1e-6);
            }
            for (double scale : List.of(1.0, 2.0, 4.0, 10.0)) {
                Labels.assertApart(LayoutDrawing.of(layout, scale));
            }
        }
    }

    private static String row(Random random) {
        String around = random.nextBoolean()
                ? "full"
                : 20 + random.nextInt(300) + " deg centred " + (random.nextInt(720) - 360) + " deg";
        double size = 1 + random.nextInt(14) / 10.0;
        String across = random.nextInt(3) == 0 ? "across -1.4 mm, 1.4 mm  staggered" : "";
        return "profile bar = flat(width: 7 mm, height: 2.4 mm)\n"
                + "band shank { finger ISO " + (44 + random.nextInt(26)) + "  profile bar  metal silver-925 }\n"
                + "stone-row lights on shank { stone round diamond " + size + " mm  around " + around
                + "  spacing at least 0.15 mm  sink 0.2 mm  " + across + " }\n"
                + "cut seats for lights from shank { hole 0.5 mm  clearance 0.01 mm }\n"
                + "prongs pins for lights on shank { diameter 0.5 mm  rise 0.25 mm  root 0.4 mm  across 0.4 mm }\n";
    }
}
