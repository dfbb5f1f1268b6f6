// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.solid;

import java.util.Arrays;

/** What a mesh measures by itself. */
public final class MeshMeasures {
    private MeshMeasures() {}

    /**
     * The enclosed volume in mm³: a sixth of the sum of the determinants of all triangles (divergence theorem), summed in
     * triangle order. Signed: an open mesh gives the volume of the cone over it from the origin.
     */
    public static double volume(Mesh mesh) {
        double sum = 0;
        double[] p = mesh.positions();
        int[] corners = mesh.triangles();
        for (int at = 0; at < corners.length; at += 3) {
            int a = 3 * corners[at];
            int b = 3 * corners[at + 1];
            int c = 3 * corners[at + 2];
            sum += p[a] * (p[b + 1] * p[c + 2] - p[b + 2] * p[c + 1])
                    + p[a + 1] * (p[b + 2] * p[c] - p[b] * p[c + 2])
                    + p[a + 2] * (p[b] * p[c + 1] - p[b + 1] * p[c]);
        }
        return sum / 6;
    }

    /** The area of all triangles in mm². */
    public static double surface(Mesh mesh) {
        double sum = 0;
        for (int t = 0; t < mesh.triangleCount(); t++) {
            sum += doubleArea(mesh, t) / 2;
        }
        return sum;
    }

    /** Twice the area of one triangle, mm². */
    public static double doubleArea(Mesh mesh, int triangle) {
        double[] p = mesh.positions();
        int a = 3 * mesh.triangles()[3 * triangle];
        int b = 3 * mesh.triangles()[3 * triangle + 1];
        int c = 3 * mesh.triangles()[3 * triangle + 2];
        double ux = p[b] - p[a];
        double uy = p[b + 1] - p[a + 1];
        double uz = p[b + 2] - p[a + 2];
        double vx = p[c] - p[a];
        double vy = p[c + 1] - p[a + 1];
        double vz = p[c + 2] - p[a + 2];
        double nx = uy * vz - uz * vy;
        double ny = uz * vx - ux * vz;
        double nz = ux * vy - uy * vx;
        return Math.sqrt(nx * nx + ny * ny + nz * nz);
    }

    /** What keeps a mesh from being a closed, oriented 2-manifold; empty text if nothing does. */
    public static String closednessFault(Mesh mesh) {
        int[] corners = mesh.triangles();
        long[] sides = new long[corners.length];
        for (int h = 0; h < corners.length; h++) {
            int from = corners[h];
            int to = corners[h % 3 == 2 ? h - 2 : h + 1];
            if (from == to) {
                return "triangle " + h / 3 + " has the same corner twice";
            }
            sides[h] = (long) from << 32 | to;
        }
        Arrays.sort(sides);
        for (int i = 0; i < sides.length; i++) {
            long from = sides[i] >>> 32;
            long to = sides[i] & 0xffffffffL;
            if (i > 0 && sides[i] == sides[i - 1]) {
                return "the edge " + from + "-" + to + " is used twice in one direction";
            }
            if (Arrays.binarySearch(sides, to << 32 | from) < 0) {
                return "the edge " + from + "-" + to + " has no neighbour";
            }
        }
        for (int t = 0; t < mesh.triangleCount(); t++) {
            if (!(doubleArea(mesh, t) > 0)) {
                return "triangle " + t + " has no area";
            }
        }
        return "";
    }

    public static boolean isClosed(Mesh mesh) {
        return closednessFault(mesh).isEmpty();
    }
}
