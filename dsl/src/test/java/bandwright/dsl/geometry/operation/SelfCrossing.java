// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.operation;

import bandwright.dsl.geometry.solid.Mesh;

/** How far a mesh passes through itself: asked of every edge against every triangle near it that shares no corner with it. */
public final class SelfCrossing {
    private final Mesh mesh;
    private double worst;

    private SelfCrossing(Mesh mesh) {
        this.mesh = mesh;
    }

    /**
     * The deepest crossing, mm: by how much both ends of an edge stand off a triangle's plane, or the point at which it passes
     * through lies inside the triangle's sides, whichever is less. 0 for a mesh that does not cross itself.
     */
    public static double depth(Mesh mesh) {
        SelfCrossing search = new SelfCrossing(mesh);
        BoxTree tree = BoxTree.ofTriangles(mesh);
        int[] corners = mesh.triangles();
        for (int h = 0; h < corners.length; h++) {
            int a = corners[h];
            int b = corners[h % 3 == 2 ? h - 2 : h + 1];
            if (a < b) {
                tree.query(
                        Math.min(mesh.x(a), mesh.x(b)),
                        Math.min(mesh.y(a), mesh.y(b)),
                        Math.min(mesh.z(a), mesh.z(b)),
                        Math.max(mesh.x(a), mesh.x(b)),
                        Math.max(mesh.y(a), mesh.y(b)),
                        Math.max(mesh.z(a), mesh.z(b)),
                        face -> search.compare(a, b, face));
            }
        }
        return search.worst;
    }

    private void compare(int a, int b, int face) {
        int[] corners = mesh.triangles();
        int c = corners[3 * face];
        int d = corners[3 * face + 1];
        int e = corners[3 * face + 2];
        if (c == a || d == a || e == a || c == b || d == b || e == b) {
            return;
        }
        // Most edges lie on one side of the plane: that is found without making anything.
        double ux = mesh.x(d) - mesh.x(c);
        double uy = mesh.y(d) - mesh.y(c);
        double uz = mesh.z(d) - mesh.z(c);
        double vx = mesh.x(e) - mesh.x(c);
        double vy = mesh.y(e) - mesh.y(c);
        double vz = mesh.z(e) - mesh.z(c);
        double nx = uy * vz - uz * vy;
        double ny = uz * vx - ux * vz;
        double nz = ux * vy - uy * vx;
        double size = Math.sqrt(nx * nx + ny * ny + nz * nz);
        double from =
                ((mesh.x(a) - mesh.x(c)) * nx + (mesh.y(a) - mesh.y(c)) * ny + (mesh.z(a) - mesh.z(c)) * nz) / size;
        double to = ((mesh.x(b) - mesh.x(c)) * nx + (mesh.y(b) - mesh.y(c)) * ny + (mesh.z(b) - mesh.z(c)) * nz) / size;
        if (from * to >= 0 || Math.min(Math.abs(from), Math.abs(to)) <= worst) {
            return;
        }
        double[] normal = {nx, ny, nz};
        int[] corner = {c, d, e};
        double share = from / (from - to);
        double[] at = new double[3];
        for (int i = 0; i < 3; i++) {
            at[i] = point(a)[i] + share * (point(b)[i] - point(a)[i]);
        }
        double depth = Math.min(Math.abs(from), Math.abs(to));
        for (int i = 0; i < 3; i++) {
            double[] start = point(corner[i]);
            double[] side = minus(point(corner[(i + 1) % 3]), start);
            depth = Math.min(depth, dot(cross(side, minus(at, start)), normal) / size / Math.sqrt(dot(side, side)));
        }
        worst = Math.max(worst, depth);
    }

    private double[] point(int vertex) {
        return new double[] {mesh.x(vertex), mesh.y(vertex), mesh.z(vertex)};
    }

    private static double[] minus(double[] a, double[] b) {
        return new double[] {a[0] - b[0], a[1] - b[1], a[2] - b[2]};
    }

    private static double[] cross(double[] a, double[] b) {
        return new double[] {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
    }

    private static double dot(double[] a, double[] b) {
        return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    }
}
