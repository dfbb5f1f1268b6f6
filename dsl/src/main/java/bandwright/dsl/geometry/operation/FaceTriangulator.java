// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.operation;

import java.util.Arrays;

import bandwright.dsl.geometry.solid.MeshBuilder;

/**
 * Cuts what is left of a face, given by its edges in any order, into triangles: the edges are chained into loops, the loops
 * seen along the face's normal, and {@link EarClipper} does the rest.
 */
final class FaceTriangulator {
    private final double[] at;
    private final MeshBuilder result;
    private final EarClipper clipper = new EarClipper();

    private int count;
    private int[] starts = new int[16];
    private int[] ends = new int[16];
    private boolean[] used = new boolean[16];
    private int across;
    private int up;

    FaceTriangulator(double[] at, MeshBuilder result) {
        this.at = at;
        this.result = result;
    }

    /** Starts a face; its plane is that of the body's triangle, seen from behind if the face is turned round. */
    void begin(BooleanOperand body, int face, boolean turned) {
        count = 0;
        int[] corners = body.mesh.triangles();
        int a = corners[3 * face];
        int b = corners[3 * face + 1];
        int c = corners[3 * face + 2];
        double ux = body.x(b) - body.x(a);
        double uy = body.y(b) - body.y(a);
        double uz = body.z(b) - body.z(a);
        double vx = body.x(c) - body.x(a);
        double vy = body.y(c) - body.y(a);
        double vz = body.z(c) - body.z(a);
        double nx = uy * vz - uz * vy;
        double ny = uz * vx - ux * vz;
        double nz = ux * vy - uy * vx;
        double size = Math.max(Math.abs(nx), Math.max(Math.abs(ny), Math.abs(nz)));
        // Looking along the normal's largest part keeps the outline's shape best and costs no arithmetic.
        boolean flip;
        if (size == Math.abs(nz)) {
            across = 0;
            up = 1;
            flip = nz < 0;
        } else if (size == Math.abs(nx)) {
            across = 1;
            up = 2;
            flip = nx < 0;
        } else {
            across = 2;
            up = 0;
            flip = ny < 0;
        }
        if (flip != turned) {
            int swap = across;
            across = up;
            up = swap;
        }
    }

    void edge(int start, int end) {
        if (count == starts.length) {
            starts = Arrays.copyOf(starts, 2 * count);
            ends = Arrays.copyOf(ends, 2 * count);
        }
        starts[count] = start;
        ends[count++] = end;
    }

    void finish(int surface) {
        if (count == 3 && ends[0] != starts[0] && isTriangle()) {
            int third = ends[0] == starts[1] ? ends[1] : ends[2];
            result.triangle(starts[0], ends[0], third, surface);
            return;
        }
        if (used.length < count) {
            used = new boolean[starts.length];
        }
        Arrays.fill(used, 0, count, false);
        clipper.clear();
        for (int first = 0; first < count; first++) {
            if (!used[first]) {
                chain(first);
            }
        }
        clipper.clip((a, b, c) -> result.triangle(a, b, c, surface));
    }

    private boolean isTriangle() {
        return ends[0] == starts[1]
                ? ends[1] == starts[2] && ends[2] == starts[0]
                : ends[0] == starts[2] && ends[2] == starts[1] && ends[1] == starts[0];
    }

    private void chain(int first) {
        clipper.beginLoop();
        int edge = first;
        do {
            used[edge] = true;
            int v = starts[edge];
            clipper.point(v, at[3 * v + across], at[3 * v + up]);
            edge = following(edge, first);
        } while (edge != first);
        clipper.endLoop();
    }

    /**
     * The edge that goes on where one ends: of several, the first met when turning clockwise from the way back, for the
     * face lies on the left. So loops that touch in a point are run through as one.
     */
    private int following(int edge, int first) {
        int best = -1;
        double bestTurn = 0;
        for (int i = 0; i < count; i++) {
            if (starts[i] == ends[edge] && (!used[i] || i == first)) {
                double turn = best < 0 && isLast(i + 1, edge, first) ? 0 : turn(edge, i);
                if (best < 0 || turn < bestTurn) {
                    best = i;
                    bestTurn = turn;
                }
            }
        }
        if (best < 0) {
            throw new IllegalStateException("The outline of a face is not closed");
        }
        return best;
    }

    private boolean isLast(int from, int edge, int first) {
        for (int i = from; i < count; i++) {
            if (starts[i] == ends[edge] && (!used[i] || i == first)) {
                return false;
            }
        }
        return true;
    }

    /** Grows with the clockwise angle from the way back along one edge to the way on along another; in (0, 4]. */
    private double turn(int edge, int next) {
        double backX = at[3 * starts[edge] + across] - at[3 * ends[edge] + across];
        double backY = at[3 * starts[edge] + up] - at[3 * ends[edge] + up];
        double onX = at[3 * ends[next] + across] - at[3 * ends[edge] + across];
        double onY = at[3 * ends[next] + up] - at[3 * ends[edge] + up];
        double size = Math.sqrt((backX * backX + backY * backY) * (onX * onX + onY * onY));
        double cosine = (backX * onX + backY * onY) / size;
        boolean right = backX * onY - backY * onX < 0;
        return right ? 1 - cosine : 3 + cosine;
    }
}
