// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.operation;

import java.util.function.IntConsumer;

import bandwright.dsl.geometry.solid.Mesh;

/**
 * A tree of upright boxes round the triangles of a mesh: a complete binary tree over the triangles, halved across
 * the longest side of the box round them. Building takes n log n, a query the log of n and what it finds.
 */
final class BoxTree {
    private static final int LEAF = 8;

    /** By item while the tree is built, then by place in the order: neighbours are read one after the other. */
    private double[] boxes;

    private final int[] order;
    private final double[] nodeBoxes;
    private final int size;
    private final int leafNodes;

    private BoxTree(double[] boxes, int[] items, int count) {
        this.boxes = boxes;
        this.size = count;
        this.order = items;
        int nodes = 1;
        while (nodes * LEAF < size) {
            nodes *= 2;
        }
        this.nodeBoxes = new double[6 * 2 * nodes];
        this.leafNodes = nodes;
        if (size > 0) {
            build(1, 0, size);
        }
        double[] inOrder = new double[6 * size];
        for (int i = 0; i < size; i++) {
            System.arraycopy(boxes, 6 * order[i], inOrder, 6 * i, 6);
        }
        this.boxes = inOrder;
    }

    static BoxTree ofTriangles(Mesh mesh) {
        return ofTriangles(mesh, Mesh.EMPTY);
    }

    /**
     * The tree of those triangles that lie above, below or beside what another mesh takes of the x-y plane; of all triangles if the
     * other is empty. No other triangle can be asked for by a part of that mesh.
     */
    static BoxTree ofTriangles(Mesh mesh, Mesh other) {
        double[] boxes = new double[6 * mesh.triangleCount()];
        double[] p = mesh.positions();
        int[] corners = mesh.triangles();
        double minX = Double.NEGATIVE_INFINITY;
        double maxX = Double.POSITIVE_INFINITY;
        double minY = Double.NEGATIVE_INFINITY;
        double maxY = Double.POSITIVE_INFINITY;
        if (!other.isEmpty()) {
            minX = Double.POSITIVE_INFINITY;
            maxX = Double.NEGATIVE_INFINITY;
            minY = Double.POSITIVE_INFINITY;
            maxY = Double.NEGATIVE_INFINITY;
            for (int v = 0; v < other.vertexCount(); v++) {
                minX = Math.min(minX, other.x(v));
                maxX = Math.max(maxX, other.x(v));
                minY = Math.min(minY, other.y(v));
                maxY = Math.max(maxY, other.y(v));
            }
        }
        int[] items = new int[mesh.triangleCount()];
        int count = 0;
        for (int t = 0; t < mesh.triangleCount(); t++) {
            for (int axis = 0; axis < 3; axis++) {
                double a = p[3 * corners[3 * t] + axis];
                double b = p[3 * corners[3 * t + 1] + axis];
                double c = p[3 * corners[3 * t + 2] + axis];
                boxes[6 * t + axis] = Math.min(a, Math.min(b, c));
                boxes[6 * t + 3 + axis] = Math.max(a, Math.max(b, c));
            }
            if (boxes[6 * t] <= maxX + BooleanOperand.MARGIN_MM
                    && boxes[6 * t + 3] >= minX - BooleanOperand.MARGIN_MM
                    && boxes[6 * t + 1] <= maxY + BooleanOperand.MARGIN_MM
                    && boxes[6 * t + 4] >= minY - BooleanOperand.MARGIN_MM) {
                items[count++] = t;
            }
        }
        return new BoxTree(boxes, items, count);
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
                    if (meets(boxes, i, minX, minY, minZ, maxX, maxY, maxZ)) {
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

    private void build(int node, int from, int to) {
        int n = 6 * node;
        double minX = Double.POSITIVE_INFINITY;
        double minY = Double.POSITIVE_INFINITY;
        double minZ = Double.POSITIVE_INFINITY;
        double maxX = Double.NEGATIVE_INFINITY;
        double maxY = Double.NEGATIVE_INFINITY;
        double maxZ = Double.NEGATIVE_INFINITY;
        for (int i = from; i < to; i++) {
            int b = 6 * order[i];
            minX = Math.min(minX, boxes[b]);
            minY = Math.min(minY, boxes[b + 1]);
            minZ = Math.min(minZ, boxes[b + 2]);
            maxX = Math.max(maxX, boxes[b + 3]);
            maxY = Math.max(maxY, boxes[b + 4]);
            maxZ = Math.max(maxZ, boxes[b + 5]);
        }
        nodeBoxes[n] = minX;
        nodeBoxes[n + 1] = minY;
        nodeBoxes[n + 2] = minZ;
        nodeBoxes[n + 3] = maxX;
        nodeBoxes[n + 4] = maxY;
        nodeBoxes[n + 5] = maxZ;
        if (node >= leafNodes) {
            return;
        }
        double width = maxX - minX;
        double depth = maxY - minY;
        double height = maxZ - minZ;
        int axis = width >= depth && width >= height ? 0 : depth >= height ? 1 : 2;
        int middle = (from + to) >>> 1;
        select(from, to - 1, middle, axis);
        build(2 * node, from, middle);
        build(2 * node + 1, middle, to);
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
