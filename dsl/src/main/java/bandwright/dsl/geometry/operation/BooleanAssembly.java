// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.operation;

import java.util.Arrays;

import org.jspecify.annotations.Nullable;

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
            SolidBoolean.Meeting first,
            SolidBoolean.Meeting second) {
        this.p = p;
        this.q = q;
        this.kind = kind;
        this.first = first.crossings();
        this.second = second.crossings();
        this.keptOfFirst = kept(first.windings(), kind.baseOfFirst);
        this.keptOfSecond = kept(second.windings(), kind.baseOfSecond);
        int crossings = this.first.count + this.second.count;
        this.result = new MeshBuilder(
                p.mesh.vertexCount() + q.mesh.vertexCount() + crossings,
                p.mesh.triangleCount() + q.mesh.triangleCount() + 2 * crossings);
        this.vertexOfFirst = keepVertices(p, keptOfFirst);
        this.vertexOfSecond = keepVertices(q, keptOfSecond);
        this.vertexOfFirstCrossing = addCrossings(this.first);
        this.vertexOfSecondCrossing = addCrossings(this.second);
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

    /** The new edges: where a face of P and a face of Q meet. Points are gathered by pair of faces, then paired up. */
    private void joinFaces() {
        int points = 2 * (first.count + second.count);
        int[] faceOfP = new int[points];
        int[] faceOfQ = new int[points];
        int[] vertex = new int[points];
        int[] times = new int[points];
        boolean[] starts = new boolean[points];
        int n = 0;
        for (int i = 0; i < first.count; i++) {
            int inclusion = kind.sign * first.times[i];
            for (int side = 0; side < 2; side++) {
                int h = side == 0 ? first.edge[i] : p.edges.partner(first.edge[i]);
                faceOfP[n] = h / 3;
                faceOfQ[n] = first.face[i];
                vertex[n] = vertexOfFirstCrossing[i];
                times[n] = Math.abs(inclusion);
                starts[n++] = (inclusion < 0) == (side == 1);
            }
        }
        for (int i = 0; i < second.count; i++) {
            int inclusion = kind.sign * second.times[i];
            for (int side = 0; side < 2; side++) {
                int h = side == 0 ? second.edge[i] : q.edges.partner(second.edge[i]);
                faceOfP[n] = second.face[i];
                faceOfQ[n] = h / 3;
                vertex[n] = vertexOfSecondCrossing[i];
                times[n] = Math.abs(inclusion);
                starts[n++] = (inclusion < 0) == (side == 0);
            }
        }
        int[] order = sorted(sorted(null, faceOfQ, q.mesh.triangleCount()), faceOfP, p.mesh.triangleCount());
        for (int from = 0; from < points; ) {
            int faceP = faceOfP[order[from]];
            int faceQ = faceOfQ[order[from]];
            int to = from;
            while (to < points && faceOfP[order[to]] == faceP && faceOfQ[order[to]] == faceQ) {
                to++;
            }
            int axis = longestAxis(order, vertex, from, to);
            pairing.clear();
            for (int i = from; i < to; i++) {
                int point = order[i];
                for (int copy = 0; copy < times[point]; copy++) {
                    int v = vertex[point] + copy;
                    pairing.offer(v, starts[point], at[3 * v + axis]);
                }
            }
            pairing.pair((a, b) -> addEdge(a, b, faceP, p.mesh.triangleCount() + faceQ));
            from = to;
        }
    }

    /** Counting sort of an order by a key from 0; equal keys stay as they were. No order given: that of the numbers. */
    private static int[] sorted(int @Nullable [] order, int[] key, int keys) {
        int[] next = new int[keys + 1];
        for (int k : key) {
            next[k + 1]++;
        }
        for (int k = 0; k < keys; k++) {
            next[k + 1] += next[k];
        }
        int[] sorted = new int[key.length];
        for (int i = 0; i < key.length; i++) {
            int point = order == null ? i : order[i];
            sorted[next[key[point]]++] = point;
        }
        return sorted;
    }

    private int longestAxis(int[] order, int[] vertex, int from, int to) {
        int longest = 0;
        double most = -1;
        for (int axis = 0; axis < 3; axis++) {
            double min = Double.POSITIVE_INFINITY;
            double max = Double.NEGATIVE_INFINITY;
            for (int i = from; i < to; i++) {
                double value = at[3 * vertex[order[i]] + axis];
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
        int[] order = sorted(null, Arrays.copyOf(edgeFace, edgeCount), faces);
        FaceTriangulator triangulator = new FaceTriangulator(at, result);
        boolean turned = kind == SolidBoolean.Kind.DIFFERENCE;
        for (int from = 0; from < edgeCount; ) {
            int f = edgeFace[order[from]];
            int to = from;
            while (to < edgeCount && edgeFace[order[to]] == f) {
                to++;
            }
            boolean ofFirst = f < p.mesh.triangleCount();
            BooleanOperand body = ofFirst ? p : q;
            int face = ofFirst ? f : f - p.mesh.triangleCount();
            triangulator.begin(body, face, !ofFirst && turned);
            for (int i = from; i < to; i++) {
                triangulator.edge(edgeStart[order[i]], edgeEnd[order[i]]);
            }
            triangulator.finish(body.mesh.surfaces()[face]);
            from = to;
        }
    }
}
