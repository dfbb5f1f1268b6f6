// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.operation;

import java.util.function.IntConsumer;

import bandwright.dsl.geometry.solid.Mesh;

/**
 * A tree of upright boxes round the triangles of a mesh: a complete binary tree over the triangles, split at the middle of
 * the longest side of the box of their centres. Building takes n log n, a query the log of n and what it finds.
 */
final class BoxTree {
    private static final int LEAF = 4;

    private final double[] boxes;
    private final int[] order;
    private final double[] nodeBoxes;
    private final int size;

    private BoxTree(double[] boxes) {
        this.boxes = boxes;
        this.size = boxes.length / 6;
        this.order = new int[size];
        for (int i = 0; i < size; i++) {
            order[i] = i;
        }
        int nodes = 1;
        while (nodes * LEAF < size) {
            nodes *= 2;
        }
        this.nodeBoxes = new double[6 * 2 * nodes];
        if (size > 0) {
            build(1, 0, size, nodes);
        }
        this.leafNodes = nodes;
    }

    private final int leafNodes;

    static BoxTree ofTriangles(Mesh mesh) {
        double[] boxes = new double[6 * mesh.triangleCount()];
        double[] p = mesh.positions();
        int[] corners = mesh.triangles();
        for (int t = 0; t < mesh.triangleCount(); t++) {
            for (int axis = 0; axis < 3; axis++) {
                double a = p[3 * corners[3 * t] + axis];
                double b = p[3 * corners[3 * t + 1] + axis];
                double c = p[3 * corners[3 * t + 2] + axis];
                boxes[6 * t + axis] = Math.min(a, Math.min(b, c));
                boxes[6 * t + 3 + axis] = Math.max(a, Math.max(b, c));
            }
        }
        return new BoxTree(boxes);
    }

    /** Hands over, in a fixed order, each item whose box meets the given one, sides included. */
    void query(double minX, double minY, double minZ, double maxX, double maxY, double maxZ, IntConsumer found) {
        if (size == 0) {
            return;
        }
        int[] stack = new int[64];
        int[] starts = new int[64];
        int[] ends = new int[64];
        int top = 0;
        stack[0] = 1;
        starts[0] = 0;
        ends[0] = size;
        while (top >= 0) {
            int node = stack[top];
            int from = starts[top];
            int to = ends[top];
            top--;
            if (!meets(nodeBoxes, node, minX, minY, minZ, maxX, maxY, maxZ)) {
                continue;
            }
            if (node >= leafNodes) {
                for (int i = from; i < to; i++) {
                    if (meets(boxes, order[i], minX, minY, minZ, maxX, maxY, maxZ)) {
                        found.accept(order[i]);
                    }
                }
            } else {
                int middle = (from + to) >>> 1;
                top++;
                stack[top] = 2 * node + 1;
                starts[top] = middle;
                ends[top] = to;
                top++;
                stack[top] = 2 * node;
                starts[top] = from;
                ends[top] = middle;
            }
        }
    }

    private static boolean meets(
            double[] boxes, int at, double minX, double minY, double minZ, double maxX, double maxY, double maxZ) {
        int b = 6 * at;
        return boxes[b] <= maxX
                && boxes[b + 3] >= minX
                && boxes[b + 1] <= maxY
                && boxes[b + 4] >= minY
                && boxes[b + 2] <= maxZ
                && boxes[b + 5] >= minZ;
    }

    private void build(int node, int from, int to, int leaves) {
        int n = 6 * node;
        for (int axis = 0; axis < 3; axis++) {
            double min = Double.POSITIVE_INFINITY;
            double max = Double.NEGATIVE_INFINITY;
            for (int i = from; i < to; i++) {
                min = Math.min(min, boxes[6 * order[i] + axis]);
                max = Math.max(max, boxes[6 * order[i] + 3 + axis]);
            }
            nodeBoxes[n + axis] = min;
            nodeBoxes[n + 3 + axis] = max;
        }
        if (node >= leaves) {
            return;
        }
        int axis = longestAxis(from, to);
        int middle = (from + to) >>> 1;
        select(from, to - 1, middle, axis);
        build(2 * node, from, middle, leaves);
        build(2 * node + 1, middle, to, leaves);
    }

    private int longestAxis(int from, int to) {
        int longest = 0;
        double most = -1;
        for (int axis = 0; axis < 3; axis++) {
            double min = Double.POSITIVE_INFINITY;
            double max = Double.NEGATIVE_INFINITY;
            for (int i = from; i < to; i++) {
                double centre = centre(order[i], axis);
                min = Math.min(min, centre);
                max = Math.max(max, centre);
            }
            if (max - min > most) {
                most = max - min;
                longest = axis;
            }
        }
        return longest;
    }

    /** Twice the middle of a box along an axis. */
    private double centre(int item, int axis) {
        return boxes[6 * item + axis] + boxes[6 * item + 3 + axis];
    }

    /** Hoare's selection: afterwards no item before {@code kth} has a larger centre than one after it. */
    private void select(int from, int to, int kth, int axis) {
        int low = from;
        int high = to;
        while (low < high) {
            double pivot = centre(order[(low + high) >>> 1], axis);
            int i = low;
            int j = high;
            while (i <= j) {
                while (centre(order[i], axis) < pivot) {
                    i++;
                }
                while (centre(order[j], axis) > pivot) {
                    j--;
                }
                if (i <= j) {
                    int swap = order[i];
                    order[i++] = order[j];
                    order[j--] = swap;
                }
            }
            if (kth <= j) {
                high = j;
            } else if (kth >= i) {
                low = i;
            } else {
                return;
            }
        }
    }
}
