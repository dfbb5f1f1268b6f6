// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.operation;

import java.util.Random;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;

import bandwright.dsl.geometry.solid.Mesh;
import bandwright.dsl.geometry.solid.MeshMeasures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

/**
 * Boxes, bars and cones whose places and sizes come from a coarse grid, so that faces coincide, edges meet and corners touch more
 * often than not; and booleans of what booleans made.
 */
class GridSolidsTest {
    private static final int TIMES = System.getenv("BANDWRIGHT_LONG_TESTS") == null ? 1 : 10;

    @Test
    void laws_hold_for_a_thousand_pairs_and_what_comes_of_them() {
        IntStream.range(0, 1000 * TIMES).parallel().forEach(seed -> {
            Random random = new Random(seed);
            Mesh a = body(random);
            Mesh b = body(random);
            Mesh c = body(random);
            Mesh or = laws(a, b, "pair " + seed);
            laws(or, c, "union of pair " + seed + " and a third body");
            laws(SolidBoolean.difference(a, b), c, "difference of pair " + seed + " and a third body");
        });
    }

    private static Mesh laws(Mesh a, Mesh b, String what) {
        Mesh and = SolidBoolean.intersection(a, b);
        Mesh or = SolidBoolean.union(a, b);
        Mesh less = SolidBoolean.difference(a, b);
        assertThat(MeshMeasures.closednessFault(and))
                .as("intersection, %s", what)
                .isEmpty();
        assertThat(MeshMeasures.closednessFault(or)).as("union, %s", what).isEmpty();
        assertThat(MeshMeasures.closednessFault(less))
                .as("difference, %s", what)
                .isEmpty();
        assertThat(SelfCrossing.depth(and))
                .as("crossing of the intersection, %s", what)
                .isLessThan(1e-6);
        assertThat(SelfCrossing.depth(or)).as("crossing of the union, %s", what).isLessThan(1e-6);
        assertThat(SelfCrossing.depth(less))
                .as("crossing of the difference, %s", what)
                .isLessThan(1e-6);
        double first = MeshMeasures.volume(a);
        double common = MeshMeasures.volume(and);
        assertThat(MeshMeasures.volume(or))
                .as("union, %s", what)
                .isEqualTo(first + MeshMeasures.volume(b) - common, within(1e-6));
        assertThat(MeshMeasures.volume(less)).as("difference, %s", what).isEqualTo(first - common, within(1e-6));
        return or;
    }

    private static Mesh body(Random random) {
        double[] origin = {grid(random), grid(random), grid(random)};
        double[][] axes = {Primitives.X, Primitives.Y, Primitives.Z, {0.6, 0.8, 0}, {0, 0.6, -0.8}};
        double[] axis = axes[random.nextInt(axes.length)];
        int[] facets = {4, 8, 12, 24};
        double radius = 0.25 * (1 + random.nextInt(3));
        double length = 0.5 * (1 + random.nextInt(4));
        int sides = facets[random.nextInt(facets.length)];
        return switch (random.nextInt(4)) {
            case 0 ->
                Primitives.box(
                        origin[0],
                        origin[1],
                        origin[2],
                        origin[0] + length,
                        origin[1] + radius,
                        origin[2] + 0.5 + grid(random));
            case 1 -> Primitives.cone(origin, axis, radius, 0.25, length, sides);
            default -> Primitives.cylinder(origin, axis, radius, length, sides);
        };
    }

    private static double grid(Random random) {
        return 0.25 * random.nextInt(5);
    }
}
