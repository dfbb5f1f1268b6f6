// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.render;

import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;

import bandwright.dsl.geometry.solid.Mesh;
import bandwright.dsl.geometry.solid.MeshBuilder;
import bandwright.dsl.material.LinearColour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

class TriangleTreeTest {
    private static final Finish GREY = Finish.Metal.polished(new LinearColour(0.5, 0.5, 0.5));

    /** One tree over many triangles against many trees over one triangle each. */
    @Test
    void the_tree_finds_the_nearest_of_all_triangles() {
        Random random = new Random(3);
        MeshBuilder all = new MeshBuilder(900, 300);
        TriangleTree[] single = new TriangleTree[300];
        for (int t = 0; t < single.length; t++) {
            MeshBuilder one = new MeshBuilder(3, 1);
            double[] middle = {10 * random.nextDouble(), 10 * random.nextDouble(), 10 * random.nextDouble()};
            for (int c = 0; c < 3; c++) {
                double x = middle[0] + random.nextDouble();
                double y = middle[1] + random.nextDouble();
                double z = middle[2] + random.nextDouble();
                all.vertex(x, y, z);
                one.vertex(x, y, z);
            }
            all.triangle(3 * t, 3 * t + 1, 3 * t + 2, 0);
            one.triangle(0, 1, 2, 0);
            single[t] = tree(one.build());
        }
        TriangleTree tree = tree(all.build());
        Ray ray = new Ray();
        Ray other = new Ray();
        int hits = 0;
        for (int i = 0; i < 2000; i++) {
            double[] direction = {random.nextGaussian(), random.nextGaussian(), i % 5 == 0 ? 0 : random.nextGaussian()};
            ray.start(5, 5, 5, direction[0], direction[1], direction[2]);
            tree.cast(ray);
            double nearest = Double.POSITIVE_INFINITY;
            for (TriangleTree one : single) {
                other.start(5, 5, 5, direction[0], direction[1], direction[2]);
                one.cast(other);
                nearest = Math.min(nearest, other.distance);
            }
            assertThat(ray.distance).isEqualTo(nearest);
            hits += nearest < Double.POSITIVE_INFINITY ? 1 : 0;
        }
        assertThat(hits).isBetween(200, 1900);
    }

    @Test
    void a_round_surface_is_smooth_and_its_edges_stay_sharp() {
        // A tube, 240 facets around: surfaces 0 inside, 1 and 3 at the ends, 2 outside.
        Mesh tube = StandInRing.revolved(new double[][] {{-2, 9, 0}, {2, 9, 1}, {2, 10, 2}, {-2, 10, 3}});
        float[] normals = new float[9 * tube.triangleCount()];

        CornerNormals.write(tube, false, normals, 0);

        for (int corner = 0; corner < 3 * tube.triangleCount(); corner++) {
            int vertex = tube.triangles()[corner];
            double radius = Math.sqrt(tube.x(vertex) * tube.x(vertex) + tube.y(vertex) * tube.y(vertex));
            double outward = (normals[3 * corner] * tube.x(vertex) + normals[3 * corner + 1] * tube.y(vertex)) / radius;
            int surface = tube.surfaces()[corner / 3];
            assertThat(outward).isCloseTo(surface == 0 ? -1 : surface == 2 ? 1 : 0, within(1e-4));
        }
    }

    @Test
    void the_ground_is_darkest_where_the_ring_stands() {
        GroundShadow shadow = new PreparedScene(StandInRing.scene()).shadow();

        assertThat(shadow.level()).isLessThan(-10);
        assertThat(shadow.at(0, 0)).isBetween(0.4, 1.0);
        assertThat(shadow.at(6, 0)).isBetween(0.05, shadow.at(0, 0));
        assertThat(shadow.at(60, 0)).isZero();
    }

    private static TriangleTree tree(Mesh mesh) {
        return new TriangleTree(new TriangleSoup(new Scene(List.of(new Body("all", mesh, GREY)))));
    }
}
