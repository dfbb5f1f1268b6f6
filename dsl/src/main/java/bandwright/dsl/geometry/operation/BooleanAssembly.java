// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.operation;

import java.util.Arrays;

import bandwright.dsl.geometry.solid.Mesh;
import bandwright.dsl.geometry.solid.MeshBuilder;

/**
 * Builds the result of a boolean from the answers alone. A vertex, an edge's part or a crossing with inclusion 1 is kept
 * once, with −1 once and turned round, with 0 not at all. On each edge and along each pair of faces, points at which the
 * result begins and ends alternate in number; sorted by place they pair up into the result's half-edges.
 */
final class BooleanAssembly {
    private final BooleanOperand p;
    private final BooleanOperand q;
    private final SolidBoolean.Kind kind;
    private final Crossings first;
    private final Crossings second;
    private final int[] keptOfFirst;
    private final int[] keptOfSecond;
    private final int[] vertexOfFirst;
    private final int[] vertexOfSecond;
    private final int[] vertexOfFirstCrossing;
    private final int[] vertexOfSecondCrossing;
    private final MeshBuilder result;
    private double[] at = new double[0];

    private int edgeCount;
    private int[] edgeFace = new int[256];
    private int[] edgeStart = new int[256];
    private int[] edgeEnd = new int[256];

    private final EndPairing pairing = new EndPairing();

    BooleanAssembly(
            BooleanOperand p,
            BooleanOperand q,
            SolidBoolean.Kind kind,
            Crossings first,
            Crossings second,
            int[] windingOfFirst,
            int[] windingOfSecond) {
        this.p = p;
        this.q = q;
        this.kind = kind;
        this.first = first;
        this.second = second;
        this.keptOfFirst = kept(windingOfFirst, kind.baseOfFirst);
        this.keptOfSecond = kept(windingOfSecond, kind.baseOfSecond);
        this.result = new MeshBuilder(
                p.mesh.vertexCount() + q.mesh.vertexCount() + first.count + second.count,
                p.mesh.triangleCount() + q.mesh.triangleCount() + 2 * (first.count + second.count));
        this.vertexOfFirst = keepVertices(p, keptOfFirst);
        this.vertexOfSecond = keepVertices(q, keptOfSecond);
        this.vertexOfFirstCrossing = addCrossings(first);
        this.vertexOfSecondCrossing = addCrossings(second);
    }

    private int[] kept(int[] winding, int base) {
        int[] kept = new int[winding.length];
        for (int v = 0; v < winding.length; v++) {
            kept[v] = base + kind.sign * winding[v];
        }
        return kept;
    }

    private int[] keepVertices(BooleanOperand body, int[] kept) {
        int[] index = new int[kept.length];
        for (int v = 0; v < kept.length; v++) {
            index[v] = result.vertexCount();
            for (int copy = Math.abs(kept[v]); copy > 0; copy--) {
                result.vertex(body.x(v), body.y(v), body.z(v));
            }
        }
        return index;
    }

    private int[] addCrossings(Crossings crossings) {
        int[] index = new int[crossings.count];
        for (int i = 0; i < crossings.count; i++) {
            index[i] = result.vertexCount();
            for (int copy = Math.abs(crossings.times[i]); copy > 0; copy--) {
                result.vertex(crossings.at[3 * i], crossings.at[3 * i + 1], crossings.at[3 * i + 2]);
            }
        }
        return index;
    }

    Mesh build() {
        at = result.build().positions();
        keepEdges(p, keptOfFirst, vertexOfFirst, first, vertexOfFirstCrossing, 0);
        keepEdges(q, keptOfSecond, vertexOfSecond, second, vertexOfSecondCrossing, p.mesh.triangleCount());
        joinFaces();
        triangulate();
        return result.build();
    }

    private void keepEdges(
            BooleanOperand body, int[] kept, int[] vertexOf, Crossings crossings, int[] crossingVertex, int faceBase) {
        int next = 0;
        for (int h = 0; h < body.edges.count(); h++) {
            if (!body.edges.isEdge(h)) {
                continue;
            }
            int start = body.edges.start(h);
            int end = body.edges.end(h);
            int from = next;
            while (next < crossings.count && crossings.edge[next] == h) {
                next++;
            }
            int left = faceBase + h / 3;
            int right = faceBase + body.edges.partner(h) / 3;
            pairing.clear();
            if (from == next) {
                for (int copy = 0; copy < Math.abs(kept[start]); copy++) {
                    boolean forward = kept[start] > 0;
                    addEdge(
                            (forward ? vertexOf[start] : vertexOf[end]) + copy,
                            (forward ? vertexOf[end] : vertexOf[start]) + copy,
                            left,
                            right);
                }
                continue;
            }
            double dx = body.x(end) - body.x(start);
            double dy = body.y(end) - body.y(start);
            double dz = body.z(end) - body.z(start);
            offer(vertexOf[start], kept[start], kept[start] > 0, dx, dy, dz);
            for (int i = from; i < next; i++) {
                int inclusion = kind.sign * crossings.times[i];
                offer(crossingVertex[i], inclusion, inclusion < 0, dx, dy, dz);
            }
            offer(vertexOf[end], kept[end], kept[end] < 0, dx, dy, dz);
            pairing.pair((a, b) -> addEdge(a, b, left, right));
        }
    }

    private void offer(int vertex, int inclusion, boolean starts, double dx, double dy, double dz) {
        for (int copy = 0; copy < Math.abs(inclusion); copy++) {
            int v = 3 * (vertex + copy);
            pairing.offer(vertex + copy, starts, at[v] * dx + at[v + 1] * dy + at[v + 2] * dz);
        }
    }

    private static final int FACE_BITS = 20;
    private static final int ORDER_BITS = 63 - 2 * FACE_BITS;

    /** The new edges: where a face of P and a face of Q meet. Points are gathered by pair of faces, then paired up. */
    private void joinFaces() {
        int points = 2 * (first.count + second.count);
        if (p.mesh.triangleCount() >= 1 << FACE_BITS
                || q.mesh.triangleCount() >= 1 << FACE_BITS
                || points >= 1 << ORDER_BITS) {
            throw new IllegalArgumentException("A body of more than a million triangles is beyond this boolean");
        }
        long[] keys = new long[points];
        int[] vertex = new int[points];
        int[] times = new int[points];
        boolean[] starts = new boolean[points];
        int n = 0;
        for (int i = 0; i < first.count; i++) {
            int inclusion = kind.sign * first.times[i];
            for (int side = 0; side < 2; side++) {
                int h = side == 0 ? first.edge[i] : p.edges.partner(first.edge[i]);
                keys[n] = key(h / 3, first.face[i], n);
                vertex[n] = vertexOfFirstCrossing[i];
                times[n] = Math.abs(inclusion);
                starts[n++] = (inclusion < 0) == (side == 1);
            }
        }
        for (int i = 0; i < second.count; i++) {
            int inclusion = kind.sign * second.times[i];
            for (int side = 0; side < 2; side++) {
                int h = side == 0 ? second.edge[i] : q.edges.partner(second.edge[i]);
                keys[n] = key(second.face[i], h / 3, n);
                vertex[n] = vertexOfSecondCrossing[i];
                times[n] = Math.abs(inclusion);
                starts[n++] = (inclusion < 0) == (side == 0);
            }
        }
        Arrays.sort(keys);
        int order = (1 << ORDER_BITS) - 1;
        for (int from = 0; from < points; ) {
            long pair = keys[from] >>> ORDER_BITS;
            int to = from;
            while (to < points && keys[to] >>> ORDER_BITS == pair) {
                to++;
            }
            int axis = longestAxis(keys, vertex, from, to, order);
            pairing.clear();
            for (int i = from; i < to; i++) {
                int point = (int) keys[i] & order;
                for (int copy = 0; copy < times[point]; copy++) {
                    int v = vertex[point] + copy;
                    pairing.offer(v, starts[point], at[3 * v + axis]);
                }
            }
            int faceOfP = (int) (pair >>> FACE_BITS);
            int faceOfQ = (int) pair & ((1 << FACE_BITS) - 1);
            pairing.pair((a, b) -> addEdge(a, b, faceOfP, p.mesh.triangleCount() + faceOfQ));
            from = to;
        }
    }

    private static long key(int faceOfP, int faceOfQ, int order) {
        return ((long) faceOfP << FACE_BITS | faceOfQ) << ORDER_BITS | order;
    }

    private int longestAxis(long[] keys, int[] vertex, int from, int to, int order) {
        int longest = 0;
        double most = -1;
        for (int axis = 0; axis < 3; axis++) {
            double min = Double.POSITIVE_INFINITY;
            double max = Double.NEGATIVE_INFINITY;
            for (int i = from; i < to; i++) {
                double value = at[3 * vertex[(int) keys[i] & order] + axis];
                min = Math.min(min, value);
                max = Math.max(max, value);
            }
            if (max - min > most) {
                most = max - min;
                longest = axis;
            }
        }
        return longest;
    }

    private void addEdge(int start, int end, int left, int right) {
        if (edgeCount + 2 > edgeFace.length) {
            edgeFace = Arrays.copyOf(edgeFace, 2 * edgeFace.length);
            edgeStart = Arrays.copyOf(edgeStart, 2 * edgeStart.length);
            edgeEnd = Arrays.copyOf(edgeEnd, 2 * edgeEnd.length);
        }
        edgeFace[edgeCount] = left;
        edgeStart[edgeCount] = start;
        edgeEnd[edgeCount++] = end;
        edgeFace[edgeCount] = right;
        edgeStart[edgeCount] = end;
        edgeEnd[edgeCount++] = start;
    }

    private void triangulate() {
        int faces = p.mesh.triangleCount() + q.mesh.triangleCount();
        int[] firstEdge = new int[faces + 1];
        for (int e = 0; e < edgeCount; e++) {
            firstEdge[edgeFace[e] + 1]++;
        }
        for (int f = 0; f < faces; f++) {
            firstEdge[f + 1] += firstEdge[f];
        }
        int[] sorted = new int[edgeCount];
        int[] filled = Arrays.copyOf(firstEdge, faces);
        for (int e = 0; e < edgeCount; e++) {
            sorted[filled[edgeFace[e]]++] = e;
        }
        FaceTriangulator triangulator = new FaceTriangulator(at, result);
        boolean turned = kind == SolidBoolean.Kind.DIFFERENCE;
        for (int f = 0; f < faces; f++) {
            int count = firstEdge[f + 1] - firstEdge[f];
            if (count == 0) {
                continue;
            }
            boolean ofFirst = f < p.mesh.triangleCount();
            BooleanOperand body = ofFirst ? p : q;
            int face = ofFirst ? f : f - p.mesh.triangleCount();
            triangulator.begin(body, face, !ofFirst && turned);
            for (int i = firstEdge[f]; i < firstEdge[f + 1]; i++) {
                triangulator.edge(edgeStart[sorted[i]], edgeEnd[sorted[i]]);
            }
            triangulator.finish(body.mesh.surfaces()[face]);
        }
    }
}
