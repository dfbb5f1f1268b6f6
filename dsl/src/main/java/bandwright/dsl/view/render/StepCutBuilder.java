// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.render;

import bandwright.dsl.geometry.solid.Mesh;
import bandwright.dsl.geometry.solid.MeshBuilder;

/**
 * Rectangular stones as a stack of rectangles, each joined to the next by four facets. The levels are our own, chosen for the
 * total depths of {@link bandwright.dsl.material.StoneCut}; a princess's chevrons are simplified to two steps.
 */
final class StepCutBuilder {
    /** From the table down: height above the girdle's lower edge, and how far in from the girdle, shares of the width. */
    private static final double[][] BAGUETTE = {
        {0.15, 0.17}, {0.10, 0.08}, {0.03, 0}, {0, 0}, {-0.22, 0.13}, {-0.38, 0.30}, {-0.45, 0.46}
    };

    private static final double[][] PRINCESS = {
        {0.14, 0.14}, {0.10, 0.05}, {0.04, 0}, {0, 0}, {-0.30, 0.18}, {-0.56, 0.48}
    };

    private StepCutBuilder() {}

    static Mesh baguette(double sizeXMm, double sizeYMm) {
        return build(sizeXMm, sizeYMm, BAGUETTE);
    }

    static Mesh princess(double sizeXMm, double sizeYMm) {
        return build(sizeXMm, sizeYMm, PRINCESS);
    }

    private static Mesh build(double sizeX, double sizeY, double[][] levels) {
        double width = Math.min(sizeX, sizeY);
        MeshBuilder mesh = new MeshBuilder(4 * levels.length, 8 * levels.length);
        for (double[] level : levels) {
            double x = sizeX / 2 - level[1] * width;
            double y = sizeY / 2 - level[1] * width;
            double z = level[0] * width;
            mesh.vertex(x, y, z);
            mesh.vertex(-x, y, z);
            mesh.vertex(-x, -y, z);
            mesh.vertex(x, -y, z);
        }
        int facet = 0;
        quad(mesh, 0, 1, 2, 3, facet++);
        for (int level = 0; level + 1 < levels.length; level++) {
            int above = 4 * level;
            int below = above + 4;
            for (int side = 0; side < 4; side++) {
                int next = (side + 1) % 4;
                quad(mesh, above + side, below + side, below + next, above + next, facet++);
            }
        }
        int last = 4 * levels.length - 4;
        quad(mesh, last + 3, last + 2, last + 1, last, facet);
        return mesh.build();
    }

    private static void quad(MeshBuilder mesh, int a, int b, int c, int d, int facet) {
        mesh.triangle(a, b, c, facet);
        mesh.triangle(a, c, d, facet);
    }
}
