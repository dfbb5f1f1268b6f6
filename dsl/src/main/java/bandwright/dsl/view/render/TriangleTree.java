// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.render;

/** A tree of boxes over all triangles of a scene, for finding the nearest one that a ray meets. */
final class TriangleTree {
    private static final double SLACK = 1e-9;

    /** What these four hold is told in {@link TreeBuilder}. */
    private final float[] boxes;

    private final int[] starts;
    private final int[] counts;
    private final int[] order;

    /** Nine coordinates a triangle, in the order of the leaves. */
    private final float[] corners;

    TriangleTree(TriangleSoup soup) {
        TreeBuilder built = new TreeBuilder(soup);
        boxes = built.boxes;
        starts = built.starts;
        counts = built.counts;
        order = built.order;
        corners = new float[9 * order.length];
        Parts.each(order.length, (from, to) -> {
            for (int i = from; i < to; i++) {
                System.arraycopy(soup.corners, 9 * order[i], corners, 9 * i, 9);
            }
        });
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
                    ray.meet(corners, i, SLACK);
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
        if (ray.triangle != Ray.NOTHING) {
            ray.triangle = order[ray.triangle];
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
}
