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
    void same_box() {
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

    @Test
    void random_tetrahedra() {
        Random random = new Random(7);
        int faults = 0;
        for (int i = 0; i < 20000; i++) {
            boolean grid = i % 2 == 0;
            Mesh a = tetra(random, grid);
            Mesh b = tetra(random, grid);
            Mesh and = SolidBoolean.intersection(a, b);
            Mesh or = SolidBoolean.union(a, b);
            Mesh less = SolidBoolean.difference(a, b);
            double v = MeshMeasures.volume(a)
                    + MeshMeasures.volume(b)
                    - MeshMeasures.volume(and)
                    - MeshMeasures.volume(or);
            double w = MeshMeasures.volume(a) - MeshMeasures.volume(and) - MeshMeasures.volume(less);
            String f = MeshMeasures.closednessFault(and)
                    + MeshMeasures.closednessFault(or)
                    + MeshMeasures.closednessFault(less);
            if (Math.abs(v) > 1e-9 || Math.abs(w) > 1e-9 || !f.isEmpty()) {
                faults++;
                if (i == 150)
                    for (Mesh m : java.util.List.of(and, or, less))
                        for (int t = 0; t < m.triangleCount(); t++) {
                            String line = MeshMeasures.doubleArea(m, t) == 0 ? "* " : "  ";
                            for (int k = 0; k < 3; k++) {
                                int u = m.triangles()[3 * t + k];
                                line += u + "(" + m.x(u) + "," + m.y(u) + "," + m.z(u) + ") ";
                            }
                            System.out.println(line);
                        }
                if (faults < 20) System.out.println(i + " " + v + " " + w + " " + f);
            }
        }
        assertThat(faults).isZero();
    }

    static Mesh tetra(Random random, boolean grid) {
        while (true) {
            MeshBuilder b = new MeshBuilder(4, 4);
            for (int i = 0; i < 4; i++) {
                b.vertex(c(random, grid), c(random, grid), c(random, grid));
            }
            b.triangle(0, 1, 2, 0);
            b.triangle(0, 2, 3, 0);
            b.triangle(0, 3, 1, 0);
            b.triangle(1, 3, 2, 0);
            Mesh m = b.build();
            if (MeshMeasures.volume(m) > 0.05) {
                return m;
            }
        }
    }

    static double c(Random random, boolean grid) {
        return grid ? random.nextInt(4) : 3 * random.nextDouble();
    }
}
