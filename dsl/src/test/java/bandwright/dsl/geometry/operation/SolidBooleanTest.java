// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.operation;

import java.util.Random;

import org.junit.jupiter.api.Test;

import bandwright.dsl.geometry.solid.Mesh;
import bandwright.dsl.geometry.solid.MeshBuilder;
import bandwright.dsl.geometry.solid.MeshMeasures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

class SolidBooleanTest {
    static Mesh box(double x0, double y0, double z0, double x1, double y1, double z1) {
        MeshBuilder b = new MeshBuilder(8, 12);
        for (int i = 0; i < 8; i++) {
            b.vertex((i & 1) == 0 ? x0 : x1, (i & 2) == 0 ? y0 : y1, (i & 4) == 0 ? z0 : z1);
        }
        int[][] quads = {{0, 2, 3, 1}, {4, 5, 7, 6}, {0, 1, 5, 4}, {2, 6, 7, 3}, {0, 4, 6, 2}, {1, 3, 7, 5}};
        for (int q = 0; q < 6; q++) {
            b.triangle(quads[q][0], quads[q][1], quads[q][2], q);
            b.triangle(quads[q][0], quads[q][2], quads[q][3], q);
        }
        return b.build();
    }

    @Test
    void two_boxes_that_cross() {
        Mesh a = box(0, 0, 0, 2, 2, 2);
        Mesh b = box(1, 1.1, 0.9, 3, 3, 3);
        check(a, b, 1 * 0.9 * 1.1);
    }

    @Test
    void boxes_that_share_faces_edges_or_corners() {
        Mesh a = box(0, 0, 0, 2, 2, 2);
        check(a, a, 8);
        check(a, box(2, 0, 0, 4, 2, 2), 0);
        check(a, box(1, 0, 0, 3, 2, 2), 4);
        check(a, box(0.5, 0.5, 0.5, 1, 1, 2), 0.5 * 0.5 * 1.5);
        check(a, box(2, 2, 0, 4, 4, 2), 0);
        check(a, box(2, 2, 2, 4, 4, 4), 0);
    }

    static void check(Mesh a, Mesh b, double common) {
        Mesh and = SolidBoolean.intersection(a, b);
        Mesh or = SolidBoolean.union(a, b);
        Mesh less = SolidBoolean.difference(a, b);
        assertThat(MeshMeasures.closednessFault(and)).isEmpty();
        assertThat(MeshMeasures.closednessFault(or)).isEmpty();
        assertThat(MeshMeasures.closednessFault(less)).isEmpty();
        assertThat(MeshMeasures.volume(and)).isEqualTo(common, within(1e-9));
        assertThat(MeshMeasures.volume(less)).isEqualTo(MeshMeasures.volume(a) - common, within(1e-9));
        assertThat(MeshMeasures.volume(or))
                .isEqualTo(MeshMeasures.volume(a) + MeshMeasures.volume(b) - common, within(1e-9));
    }

    /** Corners on a small grid, so that faces coincide, edges cross and corners touch in most pairs; and freely placed ones. */
    @Test
    void laws_hold_for_ten_thousand_pairs_of_tetrahedra() {
        Random random = new Random(7);
        for (int i = 0; i < 10_000; i++) {
            boolean grid = i % 2 == 0;
            Mesh a = tetrahedron(random, grid);
            Mesh b = tetrahedron(random, grid);
            Mesh and = SolidBoolean.intersection(a, b);
            Mesh or = SolidBoolean.union(a, b);
            Mesh less = SolidBoolean.difference(a, b);
            String faults = MeshMeasures.closednessFault(and)
                    + MeshMeasures.closednessFault(or)
                    + MeshMeasures.closednessFault(less);
            assertThat(faults).as("pair %d", i).isEmpty();
            double sum = MeshMeasures.volume(a) + MeshMeasures.volume(b);
            assertThat(MeshMeasures.volume(and) + MeshMeasures.volume(or))
                    .as("V(A∩B) + V(A∪B) of pair %d", i)
                    .isEqualTo(sum, within(1e-7));
            assertThat(MeshMeasures.volume(and) + MeshMeasures.volume(less))
                    .as("cut and kept part of pair %d", i)
                    .isEqualTo(MeshMeasures.volume(a), within(1e-7));
        }
    }

    private static Mesh tetrahedron(Random random, boolean grid) {
        while (true) {
            MeshBuilder builder = new MeshBuilder(4, 4);
            for (int i = 0; i < 4; i++) {
                builder.vertex(coordinate(random, grid), coordinate(random, grid), coordinate(random, grid));
            }
            builder.triangle(0, 1, 2, 0);
            builder.triangle(0, 2, 3, 0);
            builder.triangle(0, 3, 1, 0);
            builder.triangle(1, 3, 2, 0);
            Mesh mesh = builder.build();
            if (MeshMeasures.volume(mesh) > 0.05) {
                return mesh;
            }
        }
    }

    private static double coordinate(Random random, boolean grid) {
        return grid ? random.nextInt(4) : 3 * random.nextDouble();
    }
}
