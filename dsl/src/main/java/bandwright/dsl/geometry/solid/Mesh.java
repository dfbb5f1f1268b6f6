// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.solid;

/**
 * A triangle mesh in millimetres: vertex {@code v} lies at {@code positions[3v .. 3v+2]}, triangle {@code t} joins the
 * vertices {@code triangles[3t .. 3t+2]}, counter-clockwise seen from outside. The arrays belong to the mesh: nobody
 * writes to them once it is made.
 */
@SuppressWarnings("ArrayRecordComponent")
public record Mesh(double[] positions, int[] triangles) {
    public int vertexCount() {
        return positions.length / 3;
    }

    public int triangleCount() {
        return triangles.length / 3;
    }
}
