// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.render;

import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.RecursiveAction;

/**
 * A tree of boxes over all triangles of a scene, for finding the nearest one that a ray meets.
 *
 * <p>Built from the top: along the longest side of the centres' box, the triangles are put into {@value #BINS} bins, and
 * the cut is made where the areas of the two boxes, times their triangles, are least (surface area heuristic: Goldsmith
 * and Salmon, 1987; Wald, On fast construction of SAH based bounding volume hierarchies, 2007).
 */
final class TriangleTree {
    private static final int BINS = 16;
    private static final int LEAF = 3;

    /** Triangles from which a node's two sides are made at once. */
    private static final int SHARED = 4000;

    /** Less than a ray's stack; what is still together so deep stays a leaf. */
    private static final int DEEPEST = 60;

    /** Six numbers a node: lows, then highs. */
    private final float[] boxes;

    /** Inner node: index of the first of two children, which are neighbours. Leaf: first triangle. */
    private final int[] starts;

    /** Triangles in a leaf; 0 for an inner node. */
    private final int[] counts;

    /** The order of triangles in the leaves. */
    private final int[] order;

    private final float[] centres;
    private final float[] leafCorners;

    TriangleTree(TriangleSoup soup) {
        int count = soup.count();
        boxes = new float[12 * Math.max(1, count)];
        starts = new int[2 * Math.max(1, count)];
        counts = new int[2 * Math.max(1, count)];
        order = new int[count];
        centres = new float[3 * count];
        for (int t = 0; t < count; t++) {
            order[t] = t;
            for (int k = 0; k < 3; k++) {
                float a = soup.corners[9 * t + k];
                float b = soup.corners[9 * t + 3 + k];
                float c = soup.corners[9 * t + 6 + k];
                centres[3 * t + k] = (Math.min(a, Math.min(b, c)) + Math.max(a, Math.max(b, c))) / 2;
            }
        }
        ForkJoinPool.commonPool().invoke(new Split(soup, 0, 0, count, 0));
        leafCorners = new float[9 * count];
        for (int i = 0; i < count; i++) {
            System.arraycopy(soup.corners, 9 * order[i], leafCorners, 9 * i, 9);
        }
    }

    /**
     * Makes a node and all below it; on as many cores as there are where that pays. No two nodes are cut at the same place in the row of triangles, so
     * the place is the number of its children, whoever is first.
     */
    private final class Split extends RecursiveAction {
        private static final long serialVersionUID = 1;

        private final transient TriangleSoup soup;
        private final int node;
        private final int from;
        private final int to;
        private final int depth;

        Split(TriangleSoup soup, int node, int from, int to, int depth) {
            this.soup = soup;
            this.node = node;
            this.from = from;
            this.to = to;
            this.depth = depth;
        }

        @Override
        protected void compute() {
            split(node, from, to, depth);
        }

        private void split(int below, int low, int high, int deep) {
            measure(soup, below, low, high);
            starts[below] = low;
            counts[below] = high - low;
            if (high - low <= LEAF || deep == DEEPEST) {
                return;
            }
            int middle = partition(soup, low, high);
            if (middle == low || middle == high) {
                return;
            }
            int children = 2 * middle - 1;
            starts[below] = children;
            counts[below] = 0;
            if (high - low > SHARED) {
                invokeAll(
                        new Split(soup, children, low, middle, deep + 1),
                        new Split(soup, children + 1, middle, high, deep + 1));
            } else {
                split(children, low, middle, deep + 1);
                split(children + 1, middle, high, deep + 1);
            }
        }
    }

    private void measure(TriangleSoup soup, int node, int from, int to) {
        for (int k = 0; k < 3; k++) {
            float low = Float.POSITIVE_INFINITY;
            float high = Float.NEGATIVE_INFINITY;
            for (int i = from; i < to; i++) {
                for (int c = 9 * order[i] + k; c < 9 * order[i] + 9; c += 3) {
                    low = Math.min(low, soup.corners[c]);
                    high = Math.max(high, soup.corners[c]);
                }
            }
            boxes[6 * node + k] = low;
            boxes[6 * node + 3 + k] = high;
        }
    }

    /** Puts the triangles of the left child first and says where the right child's begin. */
    private int partition(TriangleSoup soup, int from, int to) {
        int axis = 0;
        float low = 0;
        float extent = -1;
        for (int k = 0; k < 3; k++) {
            float least = Float.POSITIVE_INFINITY;
            float most = Float.NEGATIVE_INFINITY;
            for (int i = from; i < to; i++) {
                least = Math.min(least, centres[3 * order[i] + k]);
                most = Math.max(most, centres[3 * order[i] + k]);
            }
            if (most - least > extent) {
                axis = k;
                low = least;
                extent = most - least;
            }
        }
        if (!(extent > 0)) {
            return (from + to) / 2;
        }
        float scale = BINS * 0.9999f / extent;
        int cut = bestCut(soup, from, to, axis, low, scale);
        int left = from;
        for (int i = from; i < to; i++) {
            int triangle = order[i];
            if ((int) ((centres[3 * triangle + axis] - low) * scale) < cut) {
                order[i] = order[left];
                order[left++] = triangle;
            }
        }
        return left;
    }

    private int bestCut(TriangleSoup soup, int from, int to, int axis, float low, float scale) {
        int[] held = new int[BINS];
        float[] bins = new float[6 * BINS];
        for (int b = 0; b < bins.length; b++) {
            bins[b] = b % 6 < 3 ? Float.POSITIVE_INFINITY : Float.NEGATIVE_INFINITY;
        }
        for (int i = from; i < to; i++) {
            int bin = (int) ((centres[3 * order[i] + axis] - low) * scale);
            held[bin]++;
            for (int c = 0; c < 9; c++) {
                float value = soup.corners[9 * order[i] + c];
                bins[6 * bin + c % 3] = Math.min(bins[6 * bin + c % 3], value);
                bins[6 * bin + 3 + c % 3] = Math.max(bins[6 * bin + 3 + c % 3], value);
            }
        }
        double[] costs = new double[BINS];
        sweep(held, bins, costs, false);
        sweep(held, bins, costs, true);
        int best = 1;
        for (int cut = 2; cut < BINS; cut++) {
            best = costs[cut] < costs[best] ? cut : best;
        }
        return best;
    }

    /** Adds to each cut the cost of the bins on one side of it. */
    private static void sweep(int[] held, float[] bins, double[] costs, boolean fromRight) {
        float[] box = {
            Float.POSITIVE_INFINITY, Float.POSITIVE_INFINITY, Float.POSITIVE_INFINITY,
            Float.NEGATIVE_INFINITY, Float.NEGATIVE_INFINITY, Float.NEGATIVE_INFINITY
        };
        int count = 0;
        for (int i = 0; i < BINS - 1; i++) {
            int bin = fromRight ? BINS - 1 - i : i;
            count += held[bin];
            for (int k = 0; k < 3; k++) {
                box[k] = Math.min(box[k], bins[6 * bin + k]);
                box[3 + k] = Math.max(box[3 + k], bins[6 * bin + 3 + k]);
            }
            if (count > 0) {
                double x = box[3] - box[0];
                double y = box[4] - box[1];
                double z = box[5] - box[2];
                costs[fromRight ? bin : bin + 1] += count * (x * y + y * z + z * x);
            }
        }
    }

    /** Index in the scene's row of the triangle a ray has met. */
    int triangle(Ray ray) {
        return order[ray.triangle];
    }

    /** Finds the nearest triangle nearer than the ray's present distance; front and back sides count alike. */
    void cast(Ray ray) {
        double ix = 1 / ray.directionX;
        double iy = 1 / ray.directionY;
        double iz = 1 / ray.directionZ;
        double ox = ray.originX * ix;
        double oy = ray.originY * iy;
        double oz = ray.originZ * iz;
        // Where in a node's six numbers the ray comes in, each way, and where it goes out.
        int inX = ix < 0 ? 3 : 0;
        int inY = iy < 0 ? 4 : 1;
        int inZ = iz < 0 ? 5 : 2;
        int outX = 3 - inX;
        int outY = 5 - inY;
        int outZ = 7 - inZ;
        int[] stack = ray.stack;
        int depth = 0;
        int node = order.length == 0 ? -1 : 0;
        while (node >= 0) {
            int held = counts[node];
            int near = starts[node];
            if (held > 0) {
                for (int i = near; i < near + held; i++) {
                    meet(ray, i);
                }
                node = depth == 0 ? -1 : stack[--depth];
                continue;
            }
            int one = 6 * near;
            int two = one + 6;
            double limit = ray.distance;
            double toOne = most(
                    most(boxes[one + inX] * ix - ox, boxes[one + inY] * iy - oy), most(boxes[one + inZ] * iz - oz, 0));
            double fromOne = least(
                    least(boxes[one + outX] * ix - ox, boxes[one + outY] * iy - oy),
                    least(boxes[one + outZ] * iz - oz, limit));
            double toTwo = most(
                    most(boxes[two + inX] * ix - ox, boxes[two + inY] * iy - oy), most(boxes[two + inZ] * iz - oz, 0));
            double fromTwo = least(
                    least(boxes[two + outX] * ix - ox, boxes[two + outY] * iy - oy),
                    least(boxes[two + outZ] * iz - oz, limit));
            boolean meetsOne = toOne <= fromOne;
            boolean meetsTwo = toTwo <= fromTwo;
            if (meetsOne && meetsTwo) {
                boolean oneFirst = toOne <= toTwo;
                stack[depth++] = oneFirst ? near + 1 : near;
                node = oneFirst ? near : near + 1;
            } else if (meetsOne) {
                node = near;
            } else if (meetsTwo) {
                node = near + 1;
            } else {
                node = depth == 0 ? -1 : stack[--depth];
            }
        }
    }

    // Plain comparisons: no number here is ever "no number", and what Math.min does for those costs a fifth of the
    // picture.
    private static double least(double a, double b) {
        return a < b ? a : b;
    }

    private static double most(double a, double b) {
        return a > b ? a : b;
    }

    /** Möller and Trumbore, Fast, minimum storage ray/triangle intersection, 1997. */
    private void meet(Ray ray, int triangle) {
        float[] p = leafCorners;
        int at = 9 * triangle;
        double ax = p[at];
        double ay = p[at + 1];
        double az = p[at + 2];
        double ux = p[at + 3] - ax;
        double uy = p[at + 4] - ay;
        double uz = p[at + 5] - az;
        double vx = p[at + 6] - ax;
        double vy = p[at + 7] - ay;
        double vz = p[at + 8] - az;
        double px = ray.directionY * vz - ray.directionZ * vy;
        double py = ray.directionZ * vx - ray.directionX * vz;
        double pz = ray.directionX * vy - ray.directionY * vx;
        double determinant = ux * px + uy * py + uz * pz;
        if (determinant == 0) {
            return;
        }
        double inverse = 1 / determinant;
        double sx = ray.originX - ax;
        double sy = ray.originY - ay;
        double sz = ray.originZ - az;
        double second = (sx * px + sy * py + sz * pz) * inverse;
        if (second < -1e-9 || second > 1 + 1e-9) {
            return;
        }
        double qx = sy * uz - sz * uy;
        double qy = sz * ux - sx * uz;
        double qz = sx * uy - sy * ux;
        double third = (ray.directionX * qx + ray.directionY * qy + ray.directionZ * qz) * inverse;
        if (third < -1e-9 || second + third > 1 + 1e-9) {
            return;
        }
        double distance = (vx * qx + vy * qy + vz * qz) * inverse;
        if (distance > 0 && distance < ray.distance) {
            ray.distance = distance;
            ray.triangle = triangle;
            ray.second = second;
            ray.third = third;
        }
    }
}
