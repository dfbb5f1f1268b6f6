// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.operation;

import java.util.Arrays;

import bandwright.dsl.geometry.solid.Mesh;

/**
 * The sides of a mesh's triangles: half-edge {@code h} is side {@code h % 3} of triangle {@code h / 3}, and every half-edge
 * of a closed mesh has a partner that runs the other way.
 */
final class HalfEdges {
    static final int NONE = -1;

    private final int[] corners;
    private final int[] partner;

    private HalfEdges(int[] corners, int[] partner) {
        this.corners = corners;
        this.partner = partner;
    }

    /**
     * Finds the partners. Sides are sorted by their smaller vertex into buckets of about six, so the cost grows with the
     * number of triangles. A side without a partner gets {@link #NONE}.
     */
    static HalfEdges of(Mesh mesh) {
        return of(mesh.triangles(), mesh.vertexCount());
    }

    static HalfEdges of(int[] corners, int vertexCount) {
        int[] bucketStart = new int[vertexCount + 2];
        for (int h = 0; h < corners.length; h++) {
            bucketStart[Math.min(corners[h], corners[next(h)]) + 2]++;
        }
        for (int v = 2; v < bucketStart.length; v++) {
            bucketStart[v] += bucketStart[v - 1];
        }
        int[] bucket = new int[corners.length];
        for (int h = 0; h < corners.length; h++) {
            bucket[bucketStart[Math.min(corners[h], corners[next(h)]) + 1]++] = h;
        }
        int[] partner = new int[corners.length];
        Arrays.fill(partner, NONE);
        for (int v = 0; v < vertexCount; v++) {
            for (int i = bucketStart[v]; i < bucketStart[v + 1]; i++) {
                for (int j = i + 1; partner[bucket[i]] == NONE && j < bucketStart[v + 1]; j++) {
                    int h = bucket[i];
                    int k = bucket[j];
                    if (partner[k] == NONE && corners[h] == corners[next(k)] && corners[k] == corners[next(h)]) {
                        partner[h] = k;
                        partner[k] = h;
                    }
                }
            }
        }
        return new HalfEdges(corners, partner);
    }

    static int next(int halfEdge) {
        return halfEdge % 3 == 2 ? halfEdge - 2 : halfEdge + 1;
    }

    int count() {
        return corners.length;
    }

    int start(int halfEdge) {
        return corners[halfEdge];
    }

    int end(int halfEdge) {
        return corners[next(halfEdge)];
    }

    int partner(int halfEdge) {
        return partner[halfEdge];
    }

    /** Of the two half-edges of an edge, the one that stands for it: the one with the smaller number. */
    int edge(int halfEdge) {
        return Math.min(halfEdge, partner[halfEdge]);
    }

    boolean isEdge(int halfEdge) {
        return halfEdge < partner[halfEdge];
    }
}
