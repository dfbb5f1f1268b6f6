// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.render;

import java.util.Arrays;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.RecursiveAction;

/**
 * Makes a tree of boxes from the top. Along the longest side of the middles' box, the triangles are put into {@value #BINS}
 * bins, and the cut is made where the areas of the two boxes, times their triangles, are least (surface area heuristic:
 * Goldsmith and Salmon, 1987; Wald, On fast construction of SAH based bounding volume hierarchies, 2007). What is small is cut
 * halfway: that is as good and much quicker.
 *
 * <p>The triangles' boxes lie in one row and change places in it, so that each pass reads memory in order.
 */
final class TreeBuilder {
    private static final int BINS = 8;
    private static final int LEAF = 6;

    /** Triangles up to which a node is cut halfway. */
    private static final int SMALL = 64;

    /** Triangles from which a node's two sides are made at once. */
    private static final int SHARED = 4000;

    /** Less than a ray's stack; what is still together so deep stays a leaf. */
    private static final int DEEPEST = 60;

    /** Six numbers a node: lows, then highs. */
    final float[] boxes;

    /** Inner node: index of the first of two children, which are neighbours. Leaf: first triangle. */
    final int[] starts;

    /** Triangles in a leaf; 0 for an inner node. */
    final int[] counts;

    /** The order of triangles in the leaves. */
    final int[] order;

    /** Six numbers a triangle, in their present order: lows, then highs. */
    private final float[] items;

    TreeBuilder(TriangleSoup soup) {
        int count = soup.count();
        boxes = new float[12 * Math.max(1, count)];
        starts = new int[2 * Math.max(1, count)];
        counts = new int[2 * Math.max(1, count)];
        order = new int[count];
        items = new float[6 * count];
        Parts.each(count, (from, to) -> {
            for (int t = from; t < to; t++) {
                order[t] = t;
                for (int k = 0; k < 3; k++) {
                    float a = soup.corners[9 * t + k];
                    float b = soup.corners[9 * t + 3 + k];
                    float c = soup.corners[9 * t + 6 + k];
                    items[6 * t + k] = least(a, least(b, c));
                    items[6 * t + 3 + k] = most(a, most(b, c));
                }
            }
        });
        ForkJoinPool.commonPool().invoke(new Split(0, 0, count, 0));
    }

    /**
     * Makes a node and all below it; on as many cores as there are where that pays. No two nodes are cut at the same place
     * in the row of triangles, so the place is the number of its children, whoever is first.
     */
    private final class Split extends RecursiveAction {
        private static final long serialVersionUID = 1;

        private final int node;
        private final int from;
        private final int to;
        private final int depth;

        Split(int node, int from, int to, int depth) {
            this.node = node;
            this.from = from;
            this.to = to;
            this.depth = depth;
        }

        @Override
        protected void compute() {
            split(new Bins(), node, from, to, depth);
        }

        private void split(Bins bins, int below, int low, int high, int deep) {
            measure(below, low, high);
            starts[below] = low;
            counts[below] = high - low;
            if (high - low <= LEAF || deep == DEEPEST) {
                return;
            }
            int middle = cut(bins, low, high);
            if (middle == low || middle == high) {
                middle = (low + high) / 2;
            }
            int children = 2 * middle - 1;
            starts[below] = children;
            counts[below] = 0;
            if (high - low > SHARED) {
                invokeAll(new Split(children, low, middle, deep + 1), new Split(children + 1, middle, high, deep + 1));
            } else {
                split(bins, children, low, middle, deep + 1);
                split(bins, children + 1, middle, high, deep + 1);
            }
        }
    }

    private void measure(int node, int from, int to) {
        float lowX = Float.POSITIVE_INFINITY;
        float lowY = lowX;
        float lowZ = lowX;
        float highX = Float.NEGATIVE_INFINITY;
        float highY = highX;
        float highZ = highX;
        for (int at = 6 * from; at < 6 * to; at += 6) {
            lowX = least(lowX, items[at]);
            lowY = least(lowY, items[at + 1]);
            lowZ = least(lowZ, items[at + 2]);
            highX = most(highX, items[at + 3]);
            highY = most(highY, items[at + 4]);
            highZ = most(highZ, items[at + 5]);
        }
        int at = 6 * node;
        boxes[at] = lowX;
        boxes[at + 1] = lowY;
        boxes[at + 2] = lowZ;
        boxes[at + 3] = highX;
        boxes[at + 4] = highY;
        boxes[at + 5] = highZ;
    }

    /** Puts the triangles of the left child first and says where the right child's begin. */
    private int cut(Bins bins, int from, int to) {
        // Twice the middles.
        float lowX = Float.POSITIVE_INFINITY;
        float lowY = lowX;
        float lowZ = lowX;
        float highX = Float.NEGATIVE_INFINITY;
        float highY = highX;
        float highZ = highX;
        for (int at = 6 * from; at < 6 * to; at += 6) {
            float x = items[at] + items[at + 3];
            float y = items[at + 1] + items[at + 4];
            float z = items[at + 2] + items[at + 5];
            lowX = least(lowX, x);
            lowY = least(lowY, y);
            lowZ = least(lowZ, z);
            highX = most(highX, x);
            highY = most(highY, y);
            highZ = most(highZ, z);
        }
        float longX = highX - lowX;
        float longY = highY - lowY;
        float longZ = highZ - lowZ;
        int axis = longX >= longY && longX >= longZ ? 0 : longY >= longZ ? 1 : 2;
        float low = axis == 0 ? lowX : axis == 1 ? lowY : lowZ;
        float extent = axis == 0 ? longX : axis == 1 ? longY : longZ;
        if (!(extent > 0)) {
            return from;
        }
        if (to - from <= SMALL) {
            return partition(from, to, axis, low + extent / 2);
        }
        float width = extent / BINS;
        int bin = bins.best(items, from, to, axis, low, 0.9999f / width);
        return partition(from, to, axis, low + bin * width / 0.9999f);
    }

    /** Brings those whose doubled middle is less than a limit to the front. */
    private int partition(int from, int to, int axis, float limit) {
        int left = from;
        int right = to - 1;
        while (left <= right) {
            if (items[6 * left + axis] + items[6 * left + 3 + axis] < limit) {
                left++;
                continue;
            }
            int triangle = order[left];
            order[left] = order[right];
            order[right] = triangle;
            for (int one = 6 * left, other = 6 * right; one < 6 * left + 6; one++, other++) {
                float number = items[one];
                items[one] = items[other];
                items[other] = number;
            }
            right--;
        }
        return left;
    }

    /** Where a node would be cut. */
    private static final class Bins {
        private final int[] held = new int[BINS];
        private final float[] boxes = new float[6 * BINS];
        private final float[] box = new float[6];
        private final double[] costs = new double[BINS];

        /** The bin that is the first on the right side of the best cut. */
        int best(float[] items, int from, int to, int axis, float low, float scale) {
            Arrays.fill(held, 0);
            for (int at = 0; at < boxes.length; at += 6) {
                clear(boxes, at);
            }
            for (int at = 6 * from; at < 6 * to; at += 6) {
                int bin = (int) ((items[at + axis] + items[at + 3 + axis] - low) * scale);
                held[bin]++;
                take(boxes, 6 * bin, items, at);
            }
            Arrays.fill(costs, 0);
            sweep(false);
            sweep(true);
            int best = 1;
            for (int cut = 2; cut < BINS; cut++) {
                best = costs[cut] < costs[best] ? cut : best;
            }
            return best;
        }

        /** Adds to each cut the cost of the bins on one side of it. */
        private void sweep(boolean fromRight) {
            clear(box, 0);
            int count = 0;
            for (int i = 0; i < BINS - 1; i++) {
                int bin = fromRight ? BINS - 1 - i : i;
                count += held[bin];
                take(box, 0, boxes, 6 * bin);
                if (count > 0) {
                    double x = box[3] - box[0];
                    double y = box[4] - box[1];
                    double z = box[5] - box[2];
                    costs[fromRight ? bin : bin + 1] += count * (x * y + y * z + z * x);
                }
            }
        }

        private static void clear(float[] box, int at) {
            for (int k = 0; k < 3; k++) {
                box[at + k] = Float.POSITIVE_INFINITY;
                box[at + 3 + k] = Float.NEGATIVE_INFINITY;
            }
        }

        private static void take(float[] box, int at, float[] other, int from) {
            for (int k = 0; k < 3; k++) {
                box[at + k] = least(box[at + k], other[from + k]);
                box[at + 3 + k] = most(box[at + 3 + k], other[from + 3 + k]);
            }
        }
    }

    // Plain comparisons: no number here is ever "no number", and what Math.min does for those takes time.
    private static float least(float a, float b) {
        return a < b ? a : b;
    }

    private static float most(float a, float b) {
        return a > b ? a : b;
    }
}
