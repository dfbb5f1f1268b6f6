// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.render;

/** A ray and the nearest triangle it has met; used again and again by one thread. */
final class Ray {
    static final int NOTHING = -1;

    double originX;
    double originY;
    double originZ;
    double directionX;
    double directionY;
    double directionZ;

    /** How far the hit is, in mm. */
    double distance;

    /** The triangle's place in the tree, or {@link #NOTHING}. */
    int triangle;

    /** Weights of the triangle's second and third corner at the hit. */
    double second;

    double third;

    final int[] stack = new int[64];

    void start(double x, double y, double z, double dx, double dy, double dz) {
        originX = x;
        originY = y;
        originZ = z;
        // Never quite zero: the box test divides by it, and nothing times infinity is no number.
        directionX = dx == 0 ? 1e-30 : dx;
        directionY = dy == 0 ? 1e-30 : dy;
        directionZ = dz == 0 ? 1e-30 : dz;
        distance = Double.POSITIVE_INFINITY;
        triangle = NOTHING;
    }

    double hitX() {
        return originX + distance * directionX;
    }

    double hitY() {
        return originY + distance * directionY;
    }

    double hitZ() {
        return originZ + distance * directionZ;
    }
}
