// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.operation;

import java.util.Arrays;

/**
 * Cuts plane loops, counter-clockwise outside and clockwise round holes, into triangles. Always gives the right number of
 * triangles with every side of the loops used once, whatever rounding has done to the points: if no corner can be cut off
 * cleanly, the one that does least harm is.
 *
 * <ol>
 *   <li>Each hole is joined to the loop round it by a bridge from its rightmost point.
 *   <li>Corners are cut off, the best shaped first (G. H. Meisters, "Polygons have ears", 1975).
 *   <li>Diagonals are flipped where the other one makes better triangles (C. L. Lawson, 1977).
 * </ol>
 *
 * Loops have a handful of points as a rule; the cost grows with the cube of their number.
 */
final class EarClipper {
    interface Triangles {
        void accept(int a, int b, int c);
    }

    private int count;
    private int[] id = new int[64];
    private double[] x = new double[64];
    private double[] y = new double[64];
    private int[] next = new int[64];
    private int[] previous = new int[64];

    private int loopCount;
    private int[] loopStart = new int[8];
    private double[] loopArea = new double[8];

    private int triangleCount;
    private int[] corners = new int[192];

    void clear() {
        count = 0;
        loopCount = 0;
        triangleCount = 0;
    }

    void beginLoop() {
        if (loopCount == loopStart.length) {
            loopStart = Arrays.copyOf(loopStart, 2 * loopCount);
            loopArea = Arrays.copyOf(loopArea, 2 * loopCount);
        }
        loopStart[loopCount] = count;
    }

    void point(int vertex, double px, double py) {
        int i = add(vertex, px, py);
        previous[i] = i - 1;
        next[i] = i + 1;
    }

    private int add(int vertex, double px, double py) {
        if (count == id.length) {
            id = Arrays.copyOf(id, 2 * count);
            x = Arrays.copyOf(x, 2 * count);
            y = Arrays.copyOf(y, 2 * count);
            next = Arrays.copyOf(next, 2 * count);
            previous = Arrays.copyOf(previous, 2 * count);
        }
        id[count] = vertex;
        x[count] = px;
        y[count] = py;
        return count++;
    }

    void endLoop() {
        int start = loopStart[loopCount];
        previous[start] = count - 1;
        next[count - 1] = start;
        double area = 0;
        for (int i = start; i < count; i++) {
            area += x[i] * y[next[i]] - x[next[i]] * y[i];
        }
        loopArea[loopCount++] = area;
    }

    void clip(Triangles triangles) {
        bridgeHoles();
        for (int loop = 0; loop < loopCount; loop++) {
            if (loopStart[loop] >= 0) {
                clipLoop(loopStart[loop]);
            }
        }
        flip();
        for (int t = 0; t < 3 * triangleCount; t += 3) {
            triangles.accept(id[corners[t]], id[corners[t + 1]], id[corners[t + 2]]);
        }
    }

    private void bridgeHoles() {
        int outer = -1;
        for (int loop = 0; loop < loopCount; loop++) {
            if (outer < 0 || loopArea[loop] > loopArea[outer]) {
                outer = loop;
            }
        }
        while (true) {
            int rightmost = -1;
            int hole = -1;
            for (int loop = 0; loop < loopCount; loop++) {
                if (loop != outer && loopStart[loop] >= 0 && loopArea[loop] <= 0) {
                    int candidate = rightmost(loopStart[loop]);
                    if (rightmost < 0 || x[candidate] > x[rightmost]) {
                        rightmost = candidate;
                        hole = loop;
                    }
                }
            }
            if (hole < 0) {
                return;
            }
            loopStart[hole] = -1;
            bridge(rightmost, seen(rightmost, loopStart[outer]));
        }
    }

    private int rightmost(int start) {
        int best = start;
        for (int i = next[start]; i != start; i = next[i]) {
            if (x[i] > x[best]) {
                best = i;
            }
        }
        return best;
    }

    /** A point of the loops outside that the hole's point can see, found as D. Eberly describes it (2002). */
    private int seen(int from, int fallback) {
        double hitX = Double.POSITIVE_INFINITY;
        int hit = -1;
        for (int loop = 0; loop < loopCount; loop++) {
            if (loopStart[loop] < 0 || loopArea[loop] <= 0) {
                continue;
            }
            int i = loopStart[loop];
            do {
                int j = next[i];
                if (y[i] <= y[from] && y[from] < y[j]) {
                    double at = x[i] + (y[from] - y[i]) / (y[j] - y[i]) * (x[j] - x[i]);
                    if (at >= x[from] && at < hitX) {
                        hitX = at;
                        hit = x[i] > x[j] ? i : j;
                    }
                }
                i = j;
            } while (i != loopStart[loop]);
        }
        return hit < 0 ? fallback : nearestInWay(from, hitX, hit);
    }

    private int nearestInWay(int from, double hitX, int hit) {
        int best = hit;
        double bestSlope = Math.abs(y[hit] - y[from]) / (x[hit] - x[from]);
        boolean above = y[hit] > y[from];
        for (int i = next[hit]; i != hit; i = next[i]) {
            if (x[i] < x[from] || cross(previous[i], i, next[i]) > 0) {
                continue;
            }
            boolean inside = above
                    ? inTriangle(x[i], y[i], x[from], y[from], hitX, y[from], x[hit], y[hit])
                    : inTriangle(x[i], y[i], x[from], y[from], x[hit], y[hit], hitX, y[from]);
            double slope = Math.abs(y[i] - y[from]) / (x[i] - x[from]);
            if (inside && (slope < bestSlope || (slope == bestSlope && x[i] < x[best]))) {
                best = i;
                bestSlope = slope;
            }
        }
        return best;
    }

    private void bridge(int hole, int outer) {
        int holeAgain = add(id[hole], x[hole], y[hole]);
        int outerAgain = add(id[outer], x[outer], y[outer]);
        int afterOuter = next[outer];
        int beforeHole = previous[hole];
        link(outer, hole);
        link(beforeHole, holeAgain);
        link(holeAgain, outerAgain);
        link(outerAgain, afterOuter);
    }

    private void link(int a, int b) {
        next[a] = b;
        previous[b] = a;
    }

    private void clipLoop(int start) {
        int left = 1;
        for (int i = next[start]; i != start; i = next[i]) {
            left++;
        }
        int any = start;
        while (left > 2) {
            int spike = spike(any, left);
            if (spike >= 0) {
                // To a point and back: its two sides face each other and need no triangle between.
                any = previous[spike];
                link(any, next[next[spike]]);
                left -= 2;
                continue;
            }
            int ear = left > 3 ? bestEar(any, left) : any;
            addTriangle(previous[ear], ear, next[ear]);
            any = next[ear];
            link(previous[ear], any);
            left--;
        }
    }

    private int spike(int start, int left) {
        int i = start;
        for (int n = 0; n < left; n++, i = next[i]) {
            if (id[previous[i]] == id[next[i]]) {
                return i;
            }
        }
        return -1;
    }

    private int bestEar(int start, int left) {
        int best = -1;
        double bestShape = Double.NEGATIVE_INFINITY;
        boolean bestClean = false;
        int i = start;
        for (int n = 0; n < left; n++, i = next[i]) {
            double shape = shape(previous[i], i, next[i]);
            if (left == 4) {
                // What stays behind is a triangle too: judge both.
                shape = Math.min(shape, shape(next[i], next[next[i]], previous[i]));
            }
            if (shape <= bestShape && (bestClean || shape <= 0)) {
                continue;
            }
            boolean clean = shape > 0 && isEmpty(previous[i], i, next[i]);
            if (best < 0 || (clean && !bestClean) || (clean == bestClean && shape > bestShape)) {
                best = i;
                bestShape = shape;
                bestClean = clean;
            }
        }
        return best;
    }

    private boolean isEmpty(int a, int b, int c) {
        for (int i = next[c]; i != a; i = next[i]) {
            if (!same(i, a)
                    && !same(i, b)
                    && !same(i, c)
                    && inTriangle(x[i], y[i], x[a], y[a], x[b], y[b], x[c], y[c])) {
                return false;
            }
        }
        return true;
    }

    private boolean same(int a, int b) {
        return id[a] == id[b] || (x[a] == x[b] && y[a] == y[b]);
    }

    private double cross(int a, int b, int c) {
        return cross(x[a], y[a], x[b], y[b], x[c], y[c]);
    }

    private static double cross(double ax, double ay, double bx, double by, double cx, double cy) {
        return (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
    }

    private static boolean inTriangle(
            double px, double py, double ax, double ay, double bx, double by, double cx, double cy) {
        return cross(ax, ay, bx, by, px, py) >= 0
                && cross(bx, by, cx, cy, px, py) >= 0
                && cross(cx, cy, ax, ay, px, py) >= 0;
    }

    /** Twice the area over the square of the longest side: 0.87 for an equilateral triangle, 0 for one without height. */
    private double shape(int a, int b, int c) {
        double longest = Math.max(squared(a, b), Math.max(squared(b, c), squared(c, a)));
        return longest == 0 ? 0 : cross(a, b, c) / longest;
    }

    private double squared(int a, int b) {
        double dx = x[b] - x[a];
        double dy = y[b] - y[a];
        return dx * dx + dy * dy;
    }

    private void addTriangle(int a, int b, int c) {
        if (3 * triangleCount + 3 > corners.length) {
            corners = Arrays.copyOf(corners, 2 * corners.length);
        }
        corners[3 * triangleCount] = a;
        corners[3 * triangleCount + 1] = b;
        corners[3 * triangleCount + 2] = c;
        triangleCount++;
    }

    /** Flips diagonals inside the face until none gains; the passes are bounded, for shapes here are few. */
    private void flip() {
        boolean changed = triangleCount > 1;
        for (int pass = 0; changed && pass < 8; pass++) {
            changed = false;
            for (int s = 0; s < triangleCount; s++) {
                for (int t = s + 1; t < triangleCount; t++) {
                    changed |= flip(s, t);
                }
            }
        }
    }

    private boolean flip(int s, int t) {
        for (int i = 0; i < 3; i++) {
            int a = corners[3 * s + i];
            int b = corners[3 * s + (i + 1) % 3];
            for (int j = 0; j < 3; j++) {
                if (id[corners[3 * t + j]] != id[b] || id[corners[3 * t + (j + 1) % 3]] != id[a]) {
                    continue;
                }
                int c = corners[3 * s + (i + 2) % 3];
                int d = corners[3 * t + (j + 2) % 3];
                double today = Math.min(shape(a, b, c), shape(b, a, d));
                double flipped = Math.min(shape(c, d, b), shape(d, c, a));
                if (id[c] == id[d] || flipped <= today + 1e-9 || joined(c, d)) {
                    return false;
                }
                set(s, c, d, b);
                set(t, d, c, a);
                return true;
            }
        }
        return false;
    }

    /** Whether two points already share a side: a second one between them would be one too many. */
    private boolean joined(int c, int d) {
        for (int h = 0; h < 3 * triangleCount; h++) {
            int end = corners[h % 3 == 2 ? h - 2 : h + 1];
            if ((id[corners[h]] == id[c] && id[end] == id[d]) || (id[corners[h]] == id[d] && id[end] == id[c])) {
                return true;
            }
        }
        return false;
    }

    private void set(int t, int a, int b, int c) {
        corners[3 * t] = a;
        corners[3 * t + 1] = b;
        corners[3 * t + 2] = c;
    }
}
