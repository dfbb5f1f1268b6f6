// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.ring;

import java.util.Set;

import org.junit.jupiter.api.Test;

import bandwright.dsl.construct.Ring;
import bandwright.dsl.construct.TextRing;
import bandwright.dsl.geometry.solid.Mesh;
import bandwright.dsl.geometry.solid.MeshMeasures;
import bandwright.dsl.model.Prongs;
import bandwright.dsl.view.render.Body;
import bandwright.dsl.view.render.Finish;
import bandwright.dsl.view.render.Scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

/** A ring as set, for the customer, and as it comes from the caster, for the setter. */
class RingStatesTest {
    private static final String SET = """
            profile bar = flat(width: 5 mm, height: 2.2 mm)
            band shank { finger ISO 57  profile bar  metal yellow-gold-750 }
            stone-row lights on shank { stone round diamond 1.5 mm  around full  count 36  sink 0 mm }
            cut seats for lights from shank { hole 0.8 mm  bearing 0.35 mm  clearance 0.01 mm %s }
            prongs pins for lights on shank { diameter 0.5 mm  rise 0.3 mm  across 0.4 mm  %s }
            """;

    private static Ring ring(String seats, String pins) {
        return TextRing.of(SET.formatted(seats, pins));
    }

    /** The pins of the first scene body that is neither part nor stone. */
    private static Mesh pins(Ring ring) {
        return RingScene.of(ring).bodies().stream()
                .filter(body -> body.name().equals("pins"))
                .map(Body::mesh)
                .findFirst()
                .orElseThrow();
    }

    /** From the girdle line to the highest point, as far as it lies from the finger's axis. */
    private static double tip(Ring ring) {
        Mesh mesh = pins(ring);
        double highest = 0;
        for (int v = 0; v < mesh.vertexCount(); v++) {
            double out = Math.sqrt(mesh.x(v) * mesh.x(v) + mesh.y(v) * mesh.y(v));
            highest = Math.max(highest, out);
        }
        return highest - ring.layout("lights").lines().get(0).girdleRadius();
    }

    @Test
    void set_pins_are_as_high_as_they_are_said_to_be() {
        assertThat(tip(ring("", "set-height 0.24 mm"))).isCloseTo(0.24, within(2e-3));
        // Three quarters of a crown of 14.5 per cent, above a girdle of three.
        assertThat(tip(ring("", ""))).isCloseTo(1.5 * (0.03 + 0.75 * 0.145), within(2e-3));
    }

    @Test
    void set_pins_hold_about_what_was_cast() {
        Ring ring = ring("", "");
        Mesh mesh = pins(ring);
        Prongs prongs = ring.design().prongs().get(0);
        double root = ring.pinRoot(prongs);
        double cast = 72 * StrictMath.PI * 0.25 * 0.25 * (root + 0.3 + 2.0 / 3 * 0.25);

        assertThat(MeshMeasures.volume(mesh)).isBetween(0.7 * cast, 1.05 * cast);
    }

    @Test
    void as_cast_has_no_stones_and_nothing_of_the_bench() {
        Ring bench = ring("made at bench", "");
        Scene cast = RingScene.asCast(bench, Set.of("shank"));

        assertThat(cast.bodies()).extracting(Body::name).containsExactly("shank");
        assertThat(cast.bodies()).noneMatch(body -> body.finish() instanceof Finish.Stone);
        double finished = MeshMeasures.volume(bench.body("shank").mesh());
        assertThat(MeshMeasures.volume(cast.bodies().get(0).mesh())).isGreaterThan(finished);
    }

    /** What a picture shows changes nothing of the ring. */
    @Test
    void pins_stand_as_cast_in_all_but_pictures() {
        Ring ring = ring("", "");
        double before = MeshMeasures.volume(ring.body("shank").mesh());
        RingScene.of(ring);

        assertThat(MeshMeasures.volume(ring.body("shank").mesh())).isEqualTo(before);
        assertThat(ring.design().prongs()).hasSize(1);
    }
}
