// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.Random;

import org.junit.jupiter.api.Test;

import bandwright.dsl.construct.Ring;
import bandwright.dsl.construct.StoneLayout;
import bandwright.dsl.construct.TextRing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

class StoneBodyTest {
    /** Neighbours lean apart outwards, so they are nearest at their girdles: the closed form of the row's gap. */
    @Test
    void neighbours_are_as_far_apart_as_their_girdles() {
        Random random = new Random(11);
        for (int i = 0; i < 40; i++) {
            double size = 0.9 + 1.5 * random.nextDouble();
            int count = 8 + random.nextInt((int) (55 / size) - 8);
            String cut = random.nextBoolean()
                    ? "round diamond " + size + " mm"
                    : "baguette sapphire " + size + " mm by 1.2 mm";
            Ring ring = TextRing.of(Bench.band(5, 2.2) + "stone-row lights on shank { stone " + cut
                    + "  around full  count " + count + "  sink 0.1 mm }");
            StoneLayout layout = ring.layout("lights");
            StoneLayout.Place[] pair = layout.nearestNeighbours().orElseThrow();
            double gap = layout.gapMm().orElseThrow();

            double distance =
                    StoneBody.distance(StoneBody.whole(pair[0], layout.row()), StoneBody.whole(pair[1], layout.row()));

            assertThat(distance).as(cut + " x " + count).isCloseTo(Math.max(0, gap), within(0.002));
        }
    }

    @Test
    void a_stone_meets_itself() {
        StoneLayout layout = TextRing.of(Bench.band(5, 2.2) + Bench.row("around full  count 20  sink 0.1 mm"))
                .layout("lights");
        StoneBody stone = StoneBody.whole(layout.places().get(3), layout.row());

        assertThat(StoneBody.distance(stone, stone)).isZero();
    }
}
