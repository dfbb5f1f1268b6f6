// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.operation;

import java.util.Arrays;

/** Where edges of one body pass through faces of another, ordered by edge. */
final class Crossings {
    int count;
    int[] edge = new int[64];
    int[] face = new int[64];
    /** How often, signed. */
    int[] times = new int[64];

    double[] at = new double[192];

    /** The part of the crossings that has been found so far may be asked for while more are added. */
    void add(int edgeNumber, int faceNumber, int signedTimes, double x, double y, double z) {
        if (count == edge.length) {
            edge = Arrays.copyOf(edge, 2 * count);
            face = Arrays.copyOf(face, 2 * count);
            times = Arrays.copyOf(times, 2 * count);
            at = Arrays.copyOf(at, 6 * count);
        }
        edge[count] = edgeNumber;
        face[count] = faceNumber;
        times[count] = signedTimes;
        at[3 * count] = x;
        at[3 * count + 1] = y;
        at[3 * count + 2] = z;
        count++;
    }

    /** All crossings of P's edges with Q's faces. */
    static Crossings ofFirst(BooleanOperand p, BooleanOperand q, Shadows shadows) {
        return find(p, q, shadows, true);
    }

    /** All crossings of Q's edges with P's faces. */
    static Crossings ofSecond(BooleanOperand p, BooleanOperand q, Shadows shadows) {
        return find(q, p, shadows, false);
    }

    private static Crossings find(BooleanOperand body, BooleanOperand other, Shadows shadows, boolean first) {
        Crossings crossings = new Crossings();
        HalfEdges edges = body.edges;
        for (int h = 0; h < edges.count(); h++) {
            if (!edges.isEdge(h)) {
                continue;
            }
            int edge = h;
            int a = edges.start(h);
            int b = edges.end(h);
            other.tree.query(
                    Math.min(body.x(a), body.x(b)) - BooleanOperand.MARGIN_MM,
                    Math.min(body.y(a), body.y(b)) - BooleanOperand.MARGIN_MM,
                    Math.min(body.z(a), body.z(b)) - BooleanOperand.MARGIN_MM,
                    Math.max(body.x(a), body.x(b)) + BooleanOperand.MARGIN_MM,
                    Math.max(body.y(a), body.y(b)) + BooleanOperand.MARGIN_MM,
                    Math.max(body.z(a), body.z(b)) + BooleanOperand.MARGIN_MM,
                    face -> {
                        int times = first ? shadows.edgeFace(edge, face) : shadows.faceEdge(face, edge);
                        if (times != 0) {
                            crossings.add(edge, face, times, shadows.hitX, shadows.hitY, shadows.hitZ);
                        }
                    });
        }
        return crossings;
    }
}
