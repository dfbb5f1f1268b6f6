// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.operation;

import bandwright.dsl.geometry.solid.Mesh;

/** A closed mesh with what a boolean asks of it: partners of sides, directions of vertices, the tree of boxes. */
final class BooleanOperand {
    /** Boxes are searched this much wider than they are, so that rounding of an interpolated place cannot miss one, mm. */
    static final double MARGIN_MM = 1e-9;

    final Mesh mesh;
    final double[] p;
    final HalfEdges edges;
    final BoxTree tree;
    /** Sum of the normals of the faces at each vertex, by area: the way in which the vertex is imagined displaced. */
    final double[] normals;

    /** @param other what it will be combined with: only faces near that are put into the tree */
    BooleanOperand(Mesh mesh, Mesh other) {
        this.mesh = mesh;
        this.p = mesh.positions();
        this.edges = HalfEdges.of(mesh);
        this.tree = BoxTree.ofTriangles(mesh, other);
        this.normals = normals(mesh);
    }

    double x(int vertex) {
        return p[3 * vertex];
    }

    double y(int vertex) {
        return p[3 * vertex + 1];
    }

    double z(int vertex) {
        return p[3 * vertex + 2];
    }

    private static double[] normals(Mesh mesh) {
        double[] normals = new double[mesh.positions().length];
        double[] p = mesh.positions();
        int[] corners = mesh.triangles();
        for (int at = 0; at < corners.length; at += 3) {
            int a = 3 * corners[at];
            int b = 3 * corners[at + 1];
            int c = 3 * corners[at + 2];
            double ux = p[b] - p[a];
            double uy = p[b + 1] - p[a + 1];
            double uz = p[b + 2] - p[a + 2];
            double vx = p[c] - p[a];
            double vy = p[c + 1] - p[a + 1];
            double vz = p[c + 2] - p[a + 2];
            double nx = uy * vz - uz * vy;
            double ny = uz * vx - ux * vz;
            double nz = ux * vy - uy * vx;
            for (int corner : new int[] {a, b, c}) {
                normals[corner] += nx;
                normals[corner + 1] += ny;
                normals[corner + 2] += nz;
            }
        }
        return normals;
    }
}
