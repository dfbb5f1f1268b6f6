// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.render;

import bandwright.dsl.geometry.solid.Mesh;

/**
 * The normals that make facets of one curved surface look like one: at each corner of a triangle, the mean over the
 * triangles round that vertex whose own normals are near enough, each weighted by its angle there.
 */
public final class CornerNormals {
    /** Within one surface, cosine of 40 degrees: a coarse arc stays smooth, a real edge stays sharp. */
    private static final double SAME_SURFACE = 0.766;

    /** Between surfaces, cosine of 12 degrees: only where one runs into the other without a visible edge. */
    private static final double OTHER_SURFACE = 0.978;

    private CornerNormals() {}

    /** Writes nine numbers a triangle; with {@code flat}, every corner has the triangle's own normal. */
    public static void write(Mesh mesh, boolean flat, float[] normals, int from) {
        int[] corners = mesh.triangles();
        double[] faces = new double[corners.length];
        double[] angles = new double[corners.length];
        Parts.each(mesh.triangleCount(), (begin, end) -> {
            for (int t = begin; t < end; t++) {
                faceNormal(mesh, t, faces);
                for (int c = 0; c < 3; c++) {
                    angles[3 * t + c] = flat ? 0 : angle(mesh, t, c);
                }
            }
        });
        int[] first = new int[mesh.vertexCount() + 1];
        int[] around = cornersByVertex(corners, first);
        Parts.each(corners.length, (begin, end) -> {
            double[] sum = new double[3];
            for (int corner = begin; corner < end; corner++) {
                int triangle = corner / 3;
                sum[0] = 0;
                sum[1] = 0;
                sum[2] = 0;
                for (int i = first[corners[corner]]; !flat && i < first[corners[corner] + 1]; i++) {
                    int other = around[i] / 3;
                    double cosine = faces[3 * triangle] * faces[3 * other]
                            + faces[3 * triangle + 1] * faces[3 * other + 1]
                            + faces[3 * triangle + 2] * faces[3 * other + 2];
                    boolean same = mesh.surfaces()[triangle] == mesh.surfaces()[other];
                    if (cosine > (same ? SAME_SURFACE : OTHER_SURFACE)) {
                        for (int k = 0; k < 3; k++) {
                            sum[k] += angles[around[i]] * faces[3 * other + k];
                        }
                    }
                }
                double length = Math.sqrt(sum[0] * sum[0] + sum[1] * sum[1] + sum[2] * sum[2]);
                for (int k = 0; k < 3; k++) {
                    normals[from + 3 * corner + k] = (float) (length > 0 ? sum[k] / length : faces[3 * triangle + k]);
                }
            }
        });
    }

    /** All corners, sorted by their vertex; those of vertex v are at {@code first[v]} to {@code first[v + 1] - 1}. */
    private static int[] cornersByVertex(int[] corners, int[] first) {
        for (int vertex : corners) {
            first[vertex + 1]++;
        }
        for (int v = 1; v < first.length; v++) {
            first[v] += first[v - 1];
        }
        int[] next = first.clone();
        int[] sorted = new int[corners.length];
        for (int corner = 0; corner < corners.length; corner++) {
            sorted[next[corners[corner]]++] = corner;
        }
        return sorted;
    }

    private static void faceNormal(Mesh mesh, int triangle, double[] faces) {
        int a = mesh.triangles()[3 * triangle];
        int b = mesh.triangles()[3 * triangle + 1];
        int c = mesh.triangles()[3 * triangle + 2];
        double ux = mesh.x(b) - mesh.x(a);
        double uy = mesh.y(b) - mesh.y(a);
        double uz = mesh.z(b) - mesh.z(a);
        double vx = mesh.x(c) - mesh.x(a);
        double vy = mesh.y(c) - mesh.y(a);
        double vz = mesh.z(c) - mesh.z(a);
        double nx = uy * vz - uz * vy;
        double ny = uz * vx - ux * vz;
        double nz = ux * vy - uy * vx;
        double length = Math.sqrt(nx * nx + ny * ny + nz * nz);
        double scale = length > 0 ? 1 / length : 0;
        faces[3 * triangle] = nx * scale;
        faces[3 * triangle + 1] = ny * scale;
        faces[3 * triangle + 2] = nz * scale;
    }

    /**
     * The weight of a corner: its angle, by the half-angle tangent instead of an arc cosine, which is as good a weight and
     * much cheaper. A sliver weighs next to nothing wherever it is thin.
     */
    private static double angle(Mesh mesh, int triangle, int corner) {
        int a = mesh.triangles()[3 * triangle + corner];
        int b = mesh.triangles()[3 * triangle + (corner + 1) % 3];
        int c = mesh.triangles()[3 * triangle + (corner + 2) % 3];
        double ux = mesh.x(b) - mesh.x(a);
        double uy = mesh.y(b) - mesh.y(a);
        double uz = mesh.z(b) - mesh.z(a);
        double vx = mesh.x(c) - mesh.x(a);
        double vy = mesh.y(c) - mesh.y(a);
        double vz = mesh.z(c) - mesh.z(a);
        double lengths = Math.sqrt((ux * ux + uy * uy + uz * uz) * (vx * vx + vy * vy + vz * vz));
        double cosine = lengths > 0 ? (ux * vx + uy * vy + uz * vz) / lengths : 1;
        // tan²(a/2) = (1 - cos a) / (1 + cos a); its root is held to the value at about 127 degrees.
        return Math.sqrt(Math.min(4, Math.max(0, 1 - cosine) / Math.max(1e-9, 1 + cosine)));
    }
}
