// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.render;

import org.joml.Vector3d;

import bandwright.dsl.geometry.solid.Mesh;

/** All triangles of a scene in one row: nine coordinates and nine numbers of corner normals each, and whose they are. */
final class TriangleSoup {
    final float[] corners;
    final float[] normals;
    final int[] bodies;
    final int[] surfaces;
    private final double[] low = {1e30, 1e30, 1e30};
    private final double[] high = {-1e30, -1e30, -1e30};

    TriangleSoup(Scene scene) {
        int count = scene.bodies().stream()
                .mapToInt(body -> body.mesh().triangleCount())
                .sum();
        corners = new float[9 * count];
        normals = new float[9 * count];
        bodies = new int[count];
        surfaces = new int[count];
        int at = 0;
        for (int b = 0; b < scene.bodies().size(); b++) {
            Body body = scene.bodies().get(b);
            Mesh mesh = body.mesh();
            CornerNormals.write(mesh, body.finish() instanceof Finish.Stone, normals, 9 * at);
            for (int t = 0; t < mesh.triangleCount(); t++, at++) {
                bodies[at] = b;
                surfaces[at] = mesh.surfaces()[t];
                for (int c = 0; c < 9; c++) {
                    double value = mesh.positions()[3 * mesh.triangles()[3 * t + c / 3] + c % 3];
                    corners[9 * at + c] = (float) value;
                    low[c % 3] = Math.min(low[c % 3], value);
                    high[c % 3] = Math.max(high[c % 3], value);
                }
            }
        }
    }

    int count() {
        return bodies.length;
    }

    /** The middle of the box round everything. */
    Vector3d middle() {
        return new Vector3d((low[0] + high[0]) / 2, (low[1] + high[1]) / 2, (low[2] + high[2]) / 2);
    }

    /** Half the diagonal of that box. */
    double radius() {
        return new Vector3d(high[0] - low[0], high[1] - low[1], high[2] - low[2]).length() / 2;
    }

    double low(int axis) {
        return low[axis];
    }

    double high(int axis) {
        return high[axis];
    }
}
