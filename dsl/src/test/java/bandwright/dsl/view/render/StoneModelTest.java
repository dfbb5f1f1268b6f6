// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.render;

import java.util.Arrays;

import org.joml.Vector3d;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import bandwright.dsl.geometry.solid.Mesh;
import bandwright.dsl.geometry.solid.MeshMeasures;
import bandwright.dsl.material.BrilliantProportions;
import bandwright.dsl.material.StoneCut;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

class StoneModelTest {
    private static final Mesh BRILLIANT = StoneModel.roundBrilliant(1);

    @Test
    void a_brilliant_has_57_facets_and_the_girdle() {
        assertThat(Arrays.stream(BRILLIANT.surfaces()).distinct().count()).isEqualTo(57 + 32);
    }

    @ParameterizedTest
    @EnumSource(StoneCut.class)
    void a_stone_is_closed_and_convex_and_its_facets_are_plane(StoneCut cut) {
        Mesh stone = StoneModel.of(cut, 1, cut.hasTwoSizes() ? 1.6 : 1);

        assertThat(MeshMeasures.closednessFault(stone)).isEmpty();
        for (int t = 0; t < stone.triangleCount(); t++) {
            Vector3d a = corner(stone, 3 * t);
            Vector3d normal = corner(stone, 3 * t + 1)
                    .sub(a)
                    .cross(corner(stone, 3 * t + 2).sub(a))
                    .normalize();
            for (int v = 0; v < stone.vertexCount(); v++) {
                assertThat(vertex(stone, v).sub(a).dot(normal)).isLessThan(1e-9);
            }
            for (int other = 0; other < stone.triangleCount(); other++) {
                if (stone.surfaces()[other] == stone.surfaces()[t]) {
                    assertThat(corner(stone, 3 * other).sub(a).dot(normal)).isCloseTo(0, within(1e-9));
                }
            }
        }
    }

    @ParameterizedTest
    @EnumSource(StoneCut.class)
    void a_stone_has_the_depth_of_its_cut_and_the_sizes_asked_for(StoneCut cut) {
        Mesh stone = StoneModel.of(cut, 2, cut.hasTwoSizes() ? 3 : 2);

        assertThat(extent(stone, 0)).isCloseTo(2, within(1e-12));
        assertThat(extent(stone, 1)).isCloseTo(cut.hasTwoSizes() ? 3 : 2, within(1e-12));
        // The share of a round stone is given to three places.
        assertThat(extent(stone, 2)).isCloseTo(2 * cut.depthShare(), within(2e-3));
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

    @Test
    void a_brilliant_has_the_proportions_asked_for() {
        assertThat(extent(BRILLIANT, 0)).isCloseTo(1, within(1e-12));
        assertThat(extent(BRILLIANT, 2))
                .isCloseTo(BrilliantProportions.STANDARD.totalDepthPercent() / 100, within(1e-12));
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

    private static Vector3d corner(Mesh mesh, int corner) {
        return vertex(mesh, mesh.triangles()[corner]);
    }

    private static Vector3d vertex(Mesh mesh, int vertex) {
        return new Vector3d(mesh.x(vertex), mesh.y(vertex), mesh.z(vertex));
    }
}
