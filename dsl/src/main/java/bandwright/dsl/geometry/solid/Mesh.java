// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.solid;

/**
 * A triangle mesh in millimetres: vertex {@code v} lies at {@code positions[3v .. 3v+2]}, triangle {@code t} joins the
 * vertices {@code triangles[3t .. 3t+2]}, counter-clockwise seen from outside, and belongs to the surface
 * {@code surfaces[t]}, a number that survives every operation, so that a face can always say which definition made it.
 *
 * <p>The arrays belong to the mesh: nobody writes to them once it is made.
 */
@SuppressWarnings("ArrayRecordComponent")
public record Mesh(double[] positions, int[] triangles, int[] surfaces) {
    public static final Mesh EMPTY = new Mesh(new double[0], new int[0], new int[0]);

    public Mesh {
        if (positions.length % 3 != 0 || triangles.length != 3 * surfaces.length) {
            throw new IllegalArgumentException(
                    "A mesh has three numbers a vertex, three corners and one surface a triangle");
        }
    }

    public int vertexCount() {
        return positions.length / 3;
    }

    public int triangleCount() {
        return surfaces.length;
    }

    public boolean isEmpty() {
        return surfaces.length == 0;
    }

    public double x(int vertex) {
        return positions[3 * vertex];
    }

    public double y(int vertex) {
        return positions[3 * vertex + 1];
    }

    public double z(int vertex) {
        return positions[3 * vertex + 2];
    }
}
