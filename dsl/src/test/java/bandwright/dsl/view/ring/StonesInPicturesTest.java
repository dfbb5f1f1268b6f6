// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.ring;

import java.util.List;
import java.util.Set;

import org.junit.jupiter.api.Test;

import bandwright.dsl.construct.Ring;
import bandwright.dsl.construct.TextRing;
import bandwright.dsl.geometry.operation.HalfPlaneSlice;
import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.geometry.plane.Region;
import bandwright.dsl.geometry.plane.RegionBoolean;
import bandwright.dsl.geometry.solid.Mesh;
import bandwright.dsl.view.drawing.Section;
import bandwright.dsl.view.image.Pixels;
import bandwright.dsl.view.render.Body;
import bandwright.dsl.view.render.Renderer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

/** Stones of every cut stand in pictures and sections as they are set. */
class StonesInPicturesTest {
    private static final List<String> CUTS = List.of("princess", "baguette", "oval");

    private static Ring ring(String cut) {
        return TextRing.of("""
                profile slab = flat(width: 6 mm, height: 2.6 mm)
                band shank { finger ISO 57  profile slab  metal silver-925 }
                stone-row lights on shank { stone %s sapphire 1.4 mm by 2.2 mm  count 24  sink 0.3 mm }
                cut seats for lights from shank { hole 0.6 mm  clearance 0.02 mm }
                """.formatted(cut));
    }

    /** The first stone stands at the top, where out is x, round the ring y and along the finger z. */
    @Test
    void the_second_size_lies_across() {
        for (String cut : CUTS) {
            Body stone = RingScene.of(ring(cut)).bodies().get(1);
            assertThat(extent(stone.mesh(), 1)).as(cut).isCloseTo(1.4, within(1e-9));
            assertThat(extent(stone.mesh(), 2)).as(cut).isCloseTo(2.2, within(1e-9));
        }
    }

    private static double extent(Mesh mesh, int axis) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int at = axis; at < mesh.positions().length; at += 3) {
            low = Math.min(low, mesh.positions()[at]);
            high = Math.max(high, mesh.positions()[at]);
        }
        return high - low;
    }

    private static final String PINNED = """
            profile slab = flat(width: 4 mm, height: 2.2 mm)
            band shank { finger ISO 57  profile slab  metal silver-925 }
            stone-row lights on shank { stone round diamond 1.7 mm  count 36  sink 0.25 mm }
            cut seats for lights from shank { hole 0.8 mm  bearing 0.4 mm }
            prongs pins for lights on shank { diameter 0.55 mm  rise 0.3 mm  reach 0.1 mm }
            """;

    @Test
    void a_section_between_stones_says_so_and_names_the_pins_it_cuts() {
        Ring ring = TextRing.of(PINNED);

        Section section = RingSection.of(ring, Set.of("shank"), 5);

        assertThat(section.notes()).containsExactly("no stone of lights here: the nearest stands at 0 deg");
        assertThat(section.description()).endsWith(section.notes().get(0));
        assertThat(section.parts()).extracting(Section.Part::name).containsExactly("shank", "pins");
        assertThat(section.pins()).isEmpty();
        double whole = HalfPlaneSlice.of(ring.body("shank").mesh(), Math.toRadians(5))
                .moments()
                .area();
        double shank = section.parts().get(0).region().moments().area();
        double pins = section.parts().get(1).region().moments().area();
        assertThat(shank + pins).isCloseTo(whole, within(0.005));
        // Two pins as broad as they are, from the surface or a notch below it to their round tips.
        assertThat(pins).isBetween(2 * 0.55 * 0.2, 2 * 0.55 * 1.2);
    }

    @Test
    void what_two_pins_share_is_drawn_once() {
        Ring ring = TextRing.of(
                PINNED + "prongs more for lights on shank { diameter 0.7 mm  rise 0.3 mm  reach 0.1 mm }\n");

        Section section = RingSection.of(ring, Set.of("shank"), 5);

        double whole = HalfPlaneSlice.of(ring.body("shank").mesh(), Math.toRadians(5))
                .moments()
                .area();
        assertThat(section.parts().stream()
                        .mapToDouble(part -> part.region().moments().area())
                        .sum())
                .isCloseTo(whole, within(0.005));
    }

    @Test
    void a_section_through_a_stone_has_its_pins_behind_and_no_word() {
        Section section = RingSection.of(TextRing.of(PINNED), Set.of("shank"), 0);

        assertThat(section.notes()).isEmpty();
        assertThat(section.parts()).extracting(Section.Part::name).containsExactly("shank");
        assertThat(section.pins()).hasSize(2);
    }

    @Test
    void a_section_shows_the_stone_in_its_seat() {
        for (String cut : CUTS) {
            Section section = RingSection.of(ring(cut), Set.of("shank"), 0);
            assertThat(section.stones()).as(cut).hasSize(1);
            Bounds stone = section.stones().get(0).outline().bounds();
            assertThat(stone.width()).as(cut).isCloseTo(2.2, within(1e-3));
            // Two walls beside the hole, each cut out to the stone's size above.
            assertThat(section.parts().get(0).region().pieces()).as(cut).hasSize(2);
        }
    }

    /** No pavilion goes into the metal of a seat made without a bearing. */
    @Test
    void stones_stand_clear_of_their_seats() {
        for (String cut : CUTS) {
            Ring ring = ring(cut);
            for (double degrees : new double[] {0, 1, 2, 3}) {
                Section section = RingSection.of(ring, Set.of("shank"), degrees);
                double metal = section.parts().get(0).region().moments().area();
                double stones = section.stones().stream()
                        .mapToDouble(stone -> Math.abs(stone.outline().moments().area()))
                        .sum();
                double both = section.stones().stream()
                        .map(stone -> Region.of(stone.outline()))
                        .map(stone -> RegionBoolean.intersection(
                                stone, section.parts().get(0).region()))
                        .mapToDouble(common -> common.moments().area())
                        .sum();
                assertThat(stones).isPositive();
                assertThat(metal).isPositive();
                assertThat(both).as("%s at %s deg", cut, degrees).isLessThan(2e-3 * stones);
            }
        }
    }

    @Test
    void sapphires_are_seen_from_above() {
        for (String cut : CUTS) {
            Pixels pixels = new Renderer(RingScene.of(ring(cut))).pixels(RingPictures.facing(0), 400, 300);
            double blue = 0;
            for (int x = 195; x < 205; x++) {
                for (int y = 145; y < 155; y++) {
                    int colour = pixels.at(x, y);
                    blue += (colour & 0xff) - (colour >> 16 & 0xff);
                }
            }
            assertThat(blue / 100).as(cut).isGreaterThan(20);
        }
    }
}
