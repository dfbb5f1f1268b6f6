// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import bandwright.dsl.geometry.operation.SolidBoolean;
import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.geometry.solid.Mesh;
import bandwright.dsl.geometry.solid.MeshBuilder;

/** A kept ring as two halves, parted by the plane through the finger's axis at an angle: closed bodies whose seams lie on each other. */
final class Halves {
    /** Corners of half a hexagon. */
    private static final int CORNERS = 4;

    private Halves() {}

    /** @param seamFace the number of the seams' surface */
    static Mesh of(Mesh body, double radians, int seamFace) {
        Mesh side = side(Carved.bounds(body), radians, seamFace);
        MeshBuilder both = new MeshBuilder(body.vertexCount() + 1024, body.triangleCount() + 2048);
        both.append(SolidBoolean.intersection(body, side));
        both.append(SolidBoolean.difference(body, side));
        return both.build();
    }

    /** Half a hexagonal block about the axis, larger than the body. */
    private static Mesh side(Bounds body, double radians, int face) {
        double far = 2 * body.maxY() + 1;
        MeshBuilder builder = new MeshBuilder(2 * CORNERS, 4 * CORNERS);
        for (double z : new double[] {body.minX() - 1, body.maxX() + 1}) {
            for (int i = 0; i < CORNERS; i++) {
                double angle = radians + StrictMath.PI / (CORNERS - 1) * i;
                builder.vertex(far * StrictMath.cos(angle), far * StrictMath.sin(angle), z);
            }
        }
        for (int i = 0; i < CORNERS; i++) {
            int next = (i + 1) % CORNERS;
            builder.triangle(i, next, CORNERS + next, face);
            builder.triangle(i, CORNERS + next, CORNERS + i, face);
        }
        for (int i = 1; i + 1 < CORNERS; i++) {
            builder.triangle(0, i + 1, i, face);
            builder.triangle(CORNERS, CORNERS + i, CORNERS + i + 1, face);
        }
        return builder.build();
    }
}
