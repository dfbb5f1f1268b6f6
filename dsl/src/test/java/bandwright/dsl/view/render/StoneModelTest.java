// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.render;

import java.util.Arrays;

import org.joml.Vector3d;
import org.junit.jupiter.api.Test;

import bandwright.dsl.geometry.solid.Mesh;
import bandwright.dsl.geometry.solid.MeshMeasures;
import bandwright.dsl.material.BrilliantProportions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

class StoneModelTest {
    private static final Mesh BRILLIANT = StoneModel.roundBrilliant(1);

    @Test
    void a_brilliant_is_closed() {
        assertThat(MeshMeasures.closednessFault(BRILLIANT)).isEmpty();
    }

    @Test
    void a_brilliant_has_57_facets_and_the_girdle() {
        assertThat(Arrays.stream(BRILLIANT.surfaces()).distinct().count()).isEqualTo(57 + 32);
    }

    @Test
    void a_brilliant_is_convex_and_its_facets_are_plane() {
        for (int t = 0; t < BRILLIANT.triangleCount(); t++) {
            Vector3d a = corner(3 * t);
            Vector3d normal =
                    corner(3 * t + 1).sub(a).cross(corner(3 * t + 2).sub(a)).normalize();
            for (int v = 0; v < BRILLIANT.vertexCount(); v++) {
                assertThat(vertex(v).sub(a).dot(normal)).isLessThan(1e-9);
            }
            for (int other = 0; other < BRILLIANT.triangleCount(); other++) {
                if (BRILLIANT.surfaces()[other] == BRILLIANT.surfaces()[t]) {
                    assertThat(corner(3 * other).sub(a).dot(normal)).isCloseTo(0, within(1e-9));
                }
            }
        }
    }

    @Test
    void a_brilliant_has_the_proportions_asked_for() {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        double wide = 0;
        for (int v = 0; v < BRILLIANT.vertexCount(); v++) {
            low = Math.min(low, BRILLIANT.z(v));
            high = Math.max(high, BRILLIANT.z(v));
            wide = Math.max(wide, vertex(v).mul(1, 1, 0).length());
        }

        assertThat(wide).isCloseTo(0.5, within(1e-12));
        assertThat(high - low).isCloseTo(BrilliantProportions.STANDARD.totalDepthPercent() / 100, within(1e-12));
    }

    /** The trade's formula 0.0061 d² h in carats, at a density of 3.52, is a mean over real stones. */
    @Test
    void the_volume_of_a_brilliant_agrees_with_the_formula_for_its_weight() {
        double depth = BrilliantProportions.STANDARD.totalDepthPercent() / 100;
        double formula = 0.0061 * depth * 0.2 / 3.52 * 1000;

        // Ours is 0.74 % less.
        assertThat(MeshMeasures.volume(BRILLIANT) / formula).isCloseTo(1, within(0.01));
    }

    @Test
    void a_standing_stone_looks_away_from_the_finger_and_keeps_its_volume() {
        Mesh standing = StoneModel.standing(BRILLIANT, 90, 10, 2);

        assertThat(MeshMeasures.volume(standing)).isCloseTo(MeshMeasures.volume(BRILLIANT), within(1e-9));
        double highest = 0;
        for (int v = 0; v < standing.vertexCount(); v++) {
            highest = Math.max(highest, standing.y(v));
            assertThat(standing.z(v)).isBetween(1.5 - 1e-9, 2.5 + 1e-9);
        }
        double crown =
                BrilliantProportions.STANDARD.crownHeightPercent() + BrilliantProportions.STANDARD.girdlePercent();
        assertThat(highest).isCloseTo(10 + crown / 100, within(1e-9));
    }

    private static Vector3d corner(int corner) {
        return vertex(BRILLIANT.triangles()[corner]);
    }

    private static Vector3d vertex(int vertex) {
        return new Vector3d(BRILLIANT.x(vertex), BRILLIANT.y(vertex), BRILLIANT.z(vertex));
    }
}
