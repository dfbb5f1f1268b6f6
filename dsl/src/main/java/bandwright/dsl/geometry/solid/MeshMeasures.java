// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.solid;

import java.util.function.IntPredicate;

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

    /**
     * What keeps a mesh from being a closed, oriented 2-manifold; empty text if nothing does. Sides are gathered by the vertex
     * they leave, about six each, so the cost grows with the number of triangles.
     */
    public static String closednessFault(Mesh mesh) {
        int[] corners = mesh.triangles();
        int[] first = new int[mesh.vertexCount() + 1];
        for (int from : corners) {
            first[from + 1]++;
        }
        for (int v = 0; v < mesh.vertexCount(); v++) {
            first[v + 1] += first[v];
        }
        int[] filled = first.clone();
        int[] ends = new int[corners.length];
        for (int h = 0; h < corners.length; h++) {
            int from = corners[h];
            int to = end(corners, h);
            if (from == to) {
                return "triangle " + h / 3 + " has the same corner twice";
            }
            if (holds(ends, first[from], filled[from], to)) {
                return "the edge " + from + "-" + to + " is used twice in one direction";
            }
            ends[filled[from]++] = to;
        }
        for (int h = 0; h < corners.length; h++) {
            int from = corners[h];
            int to = end(corners, h);
            if (!holds(ends, first[to], first[to + 1], from)) {
                return "the edge " + from + "-" + to + " of triangle " + h / 3 + " has no neighbour";
            }
        }
        for (int t = 0; t < mesh.triangleCount(); t++) {
            if (!(doubleArea(mesh, t) > 0)) {
                return "triangle " + t + " has no area";
            }
        }
        return "";
    }

    private static int end(int[] corners, int side) {
        return corners[side % 3 == 2 ? side - 2 : side + 1];
    }

    private static boolean holds(int[] ends, int from, int to, int vertex) {
        for (int i = from; i < to; i++) {
            if (ends[i] == vertex) {
                return true;
            }
        }
        return false;
    }

    /** How many shells a mesh has: surfaces that share no vertex. */
    public static int shells(Mesh mesh) {
        return shellsOf(mesh, surface -> true);
    }

    /**
     * How many of them are made of such surfaces alone.
     *
     * @param such asked with the numbers of the mesh's surfaces
     */
    public static int shellsOf(Mesh mesh, IntPredicate such) {
        int[] parent = new int[mesh.vertexCount()];
        for (int v = 0; v < parent.length; v++) {
            parent[v] = v;
        }
        int[] corners = mesh.triangles();
        for (int h = 0; h < corners.length; h++) {
            int a = root(parent, corners[h]);
            int b = root(parent, end(corners, h));
            parent[Math.max(a, b)] = Math.min(a, b);
        }
        boolean[] counts = new boolean[parent.length];
        for (int corner : corners) {
            counts[root(parent, corner)] = true;
        }
        for (int t = 0; t < mesh.triangleCount(); t++) {
            if (!such.test(mesh.surfaces()[t])) {
                counts[root(parent, corners[3 * t])] = false;
            }
        }
        int shells = 0;
        for (boolean counted : counts) {
            shells += counted ? 1 : 0;
        }
        return shells;
    }

    static int root(int[] parent, int vertex) {
        int v = vertex;
        while (parent[v] != v) {
            parent[v] = parent[parent[v]];
            v = parent[v];
        }
        return v;
    }

    public static boolean isClosed(Mesh mesh) {
        return closednessFault(mesh).isEmpty();
    }
}
