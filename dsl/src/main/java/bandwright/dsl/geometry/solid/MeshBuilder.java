// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.solid;

import java.util.Arrays;

/** Collects vertices and triangles into growing primitive arrays. */
public final class MeshBuilder {
    private double[] positions;
    private int[] triangles;
    private int[] surfaces;
    private int vertexCount;
    private int triangleCount;

    public MeshBuilder(int expectedVertices, int expectedTriangles) {
        positions = new double[3 * Math.max(8, expectedVertices)];
        triangles = new int[3 * Math.max(8, expectedTriangles)];
        surfaces = new int[Math.max(8, expectedTriangles)];
    }

    public int vertexCount() {
        return vertexCount;
    }

    /** Adds a vertex, in mm, and returns its index. */
    public int vertex(double x, double y, double z) {
        int at = 3 * vertexCount;
        if (at == positions.length) {
            positions = Arrays.copyOf(positions, 2 * at);
        }
        positions[at] = x;
        positions[at + 1] = y;
        positions[at + 2] = z;
        return vertexCount++;
    }

    /** Adds a triangle, counter-clockwise seen from outside. */
    public void triangle(int a, int b, int c, int surface) {
        if (triangleCount == surfaces.length) {
            triangles = Arrays.copyOf(triangles, 2 * triangles.length);
            surfaces = Arrays.copyOf(surfaces, 2 * surfaces.length);
        }
        int at = 3 * triangleCount;
        triangles[at] = a;
        triangles[at + 1] = b;
        triangles[at + 2] = c;
        surfaces[triangleCount++] = surface;
    }

    /** Adds a whole mesh beside what is there. */
    public void append(Mesh mesh) {
        int base = vertexCount;
        for (int v = 0; v < mesh.vertexCount(); v++) {
            vertex(mesh.x(v), mesh.y(v), mesh.z(v));
        }
        int[] corners = mesh.triangles();
        for (int t = 0; t < mesh.triangleCount(); t++) {
            triangle(base + corners[3 * t], base + corners[3 * t + 1], base + corners[3 * t + 2], mesh.surfaces()[t]);
        }
    }

    public Mesh build() {
        return new Mesh(
                Arrays.copyOf(positions, 3 * vertexCount),
                Arrays.copyOf(triangles, 3 * triangleCount),
                Arrays.copyOf(surfaces, triangleCount));
    }
}
