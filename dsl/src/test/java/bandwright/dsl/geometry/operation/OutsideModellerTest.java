// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.operation;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.apache.commons.geometry.euclidean.threed.RegionBSPTree3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.threed.mesh.SimpleTriangleMesh;
import org.apache.commons.numbers.core.Precision;
import org.junit.jupiter.api.Test;

import bandwright.dsl.geometry.solid.Mesh;
import bandwright.dsl.geometry.solid.MeshMeasures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

/**
 * The same bodies by a modeller that is not ours: Apache Commons Geometry 1.0 (Apache-2.0), trees of half-spaces. Small bodies
 * only: its cost grows too fast for whole rings.
 */
class OutsideModellerTest {
    private static final Precision.DoubleEquivalence NEAR = Precision.doubleEquivalenceOfEpsilon(1e-10);

    @Test
    void boxes() {
        Random random = new Random(21);
        for (int i = 0; i < 40; i++) {
            check(randomBox(random), randomBox(random), "boxes " + i);
        }
    }

    @Test
    void bars_aslant_in_blocks() {
        Random random = new Random(22);
        for (int i = 0; i < 40; i++) {
            check(randomBox(random), randomBar(random, 6), "bar and block " + i);
        }
    }

    @Test
    void crossed_bars() {
        Random random = new Random(23);
        for (int i = 0; i < 40; i++) {
            check(randomBar(random, 6), randomBar(random, 8), "crossed bars " + i);
        }
    }

    @Test
    void seat_in_a_block() {
        Mesh block = Primitives.box(-1, -1, -1, 1, 1, 0.4);
        Mesh seat = Primitives.turned(
                new double[] {0.1, 0.05, 0},
                Primitives.Z,
                List.of(
                        new bandwright.dsl.geometry.plane.Point(-2, 0.4),
                        new bandwright.dsl.geometry.plane.Point(-0.35, 0.4),
                        new bandwright.dsl.geometry.plane.Point(0, 0.75),
                        new bandwright.dsl.geometry.plane.Point(1, 0.75)),
                12);
        check(block, seat, "seat");
    }

    private static void check(Mesh a, Mesh b, String what) {
        RegionBSPTree3D and = RegionBSPTree3D.empty();
        and.intersection(tree(a), tree(b));
        RegionBSPTree3D or = RegionBSPTree3D.empty();
        or.union(tree(a), tree(b));
        RegionBSPTree3D less = RegionBSPTree3D.empty();
        less.difference(tree(a), tree(b));
        assertThat(MeshMeasures.volume(SolidBoolean.intersection(a, b)))
                .as("intersection, %s", what)
                .isEqualTo(and.isEmpty() ? 0 : and.getSize(), within(1e-8));
        assertThat(MeshMeasures.volume(SolidBoolean.union(a, b)))
                .as("union, %s", what)
                .isEqualTo(or.getSize(), within(1e-8));
        assertThat(MeshMeasures.volume(SolidBoolean.difference(a, b)))
                .as("difference, %s", what)
                .isEqualTo(less.isEmpty() ? 0 : less.getSize(), within(1e-8));
    }

    private static RegionBSPTree3D tree(Mesh mesh) {
        List<Vector3D> vertices = new ArrayList<>();
        for (int v = 0; v < mesh.vertexCount(); v++) {
            vertices.add(Vector3D.of(mesh.x(v), mesh.y(v), mesh.z(v)));
        }
        int[][] faces = new int[mesh.triangleCount()][];
        for (int t = 0; t < faces.length; t++) {
            int[] corners = mesh.triangles();
            faces[t] = new int[] {corners[3 * t], corners[3 * t + 1], corners[3 * t + 2]};
        }
        return SimpleTriangleMesh.from(vertices, List.of(faces), NEAR).toTree();
    }

    private static Mesh randomBox(Random random) {
        double x = random.nextDouble();
        double y = random.nextDouble();
        double z = random.nextDouble();
        return Primitives.box(
                x, y, z, x + 0.3 + random.nextDouble(), y + 0.3 + random.nextDouble(), z + 0.3 + random.nextDouble());
    }

    private static Mesh randomBar(Random random, int facets) {
        double[] axis = {random.nextGaussian(), random.nextGaussian(), random.nextGaussian()};
        double size = Math.sqrt(axis[0] * axis[0] + axis[1] * axis[1] + axis[2] * axis[2]);
        double[] origin = new double[3];
        for (int i = 0; i < 3; i++) {
            axis[i] /= size;
            origin[i] = 0.5 + random.nextDouble() - axis[i];
        }
        return Primitives.cylinder(origin, axis, 0.2 + 0.5 * random.nextDouble(), 2, facets);
    }
}
