// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.operation;

import java.util.Arrays;

/**
 * How often the vertices of one body lie inside the other. Along an edge the number changes by the crossings on it, exactly,
 * so one vertex of each connected piece is worked out from the faces below it and the rest follow.
 */
final class Windings {
    private Windings() {}

    /** Windings of P's vertices in Q. */
    static int[] ofFirst(BooleanOperand p, BooleanOperand q, Shadows shadows, Crossings crossings) {
        return spread(p, q, crossings, (vertex, face) -> shadows.vertexFace(vertex, face));
    }

    /** Windings of Q's vertices in P. */
    static int[] ofSecond(BooleanOperand p, BooleanOperand q, Shadows shadows, Crossings crossings) {
        return spread(q, p, crossings, (vertex, face) -> -shadows.faceVertex(face, vertex));
    }

    private interface Below {
        int count(int vertex, int face);
    }

    private static int[] spread(BooleanOperand body, BooleanOperand other, Crossings crossings, Below below) {
        HalfEdges edges = body.edges;
        int vertexCount = body.mesh.vertexCount();
        int[] change = new int[edges.count()];
        for (int i = 0; i < crossings.count; i++) {
            change[crossings.edge[i]] += crossings.times[i];
        }
        int[] leaving = new int[vertexCount];
        Arrays.fill(leaving, HalfEdges.NONE);
        int[] nextLeaving = new int[edges.count()];
        for (int h = 0; h < edges.count(); h++) {
            nextLeaving[h] = leaving[edges.start(h)];
            leaving[edges.start(h)] = h;
        }
        int[] winding = new int[vertexCount];
        boolean[] known = new boolean[vertexCount];
        int[] queue = new int[vertexCount];
        for (int root = 0; root < vertexCount; root++) {
            if (known[root] || leaving[root] == HalfEdges.NONE) {
                continue;
            }
            winding[root] = count(body, other, root, below);
            known[root] = true;
            queue[0] = root;
            int filled = 1;
            for (int taken = 0; taken < filled; taken++) {
                int vertex = queue[taken];
                for (int h = leaving[vertex]; h != HalfEdges.NONE; h = nextLeaving[h]) {
                    int end = edges.end(h);
                    if (!known[end]) {
                        int step = edges.isEdge(h) ? change[h] : -change[edges.partner(h)];
                        winding[end] = winding[vertex] - step;
                        known[end] = true;
                        queue[filled++] = end;
                    }
                }
            }
        }
        return winding;
    }

    private static int count(BooleanOperand body, BooleanOperand other, int vertex, Below below) {
        int[] sum = new int[1];
        other.tree.query(
                body.x(vertex) - BooleanOperand.MARGIN_MM,
                body.y(vertex) - BooleanOperand.MARGIN_MM,
                Double.NEGATIVE_INFINITY,
                body.x(vertex) + BooleanOperand.MARGIN_MM,
                body.y(vertex) + BooleanOperand.MARGIN_MM,
                Double.POSITIVE_INFINITY,
                face -> sum[0] += below.count(vertex, face));
        return sum[0];
    }
}
