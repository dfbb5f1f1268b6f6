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

    /** The triangle's number in the row it was looked for in, or {@link #NOTHING}. */
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

    /**
     * Takes a triangle for the nearest if it is met nearer than what was met so far; front and back sides count alike
     * (Möller and Trumbore, Fast, minimum storage ray/triangle intersection, 1997).
     *
     * @param p nine coordinates a triangle
     * @param slack how far outside still counts, as a share of the triangle
     */
    void meet(float[] p, int number, double slack) {
        int at = 9 * number;
        double ax = p[at];
        double ay = p[at + 1];
        double az = p[at + 2];
        double ux = p[at + 3] - ax;
        double uy = p[at + 4] - ay;
        double uz = p[at + 5] - az;
        double vx = p[at + 6] - ax;
        double vy = p[at + 7] - ay;
        double vz = p[at + 8] - az;
        double px = directionY * vz - directionZ * vy;
        double py = directionZ * vx - directionX * vz;
        double pz = directionX * vy - directionY * vx;
        double determinant = ux * px + uy * py + uz * pz;
        if (determinant == 0) {
            return;
        }
        double inverse = 1 / determinant;
        double sx = originX - ax;
        double sy = originY - ay;
        double sz = originZ - az;
        double towardsSecond = (sx * px + sy * py + sz * pz) * inverse;
        if (towardsSecond < -slack || towardsSecond > 1 + slack) {
            return;
        }
        double qx = sy * uz - sz * uy;
        double qy = sz * ux - sx * uz;
        double qz = sx * uy - sy * ux;
        double towardsThird = (directionX * qx + directionY * qy + directionZ * qz) * inverse;
        if (towardsThird < -slack || towardsSecond + towardsThird > 1 + slack) {
            return;
        }
        double reached = (vx * qx + vy * qy + vz * qz) * inverse;
        if (reached > 0 && reached < distance) {
            distance = reached;
            triangle = number;
            second = towardsSecond;
            third = towardsThird;
        }
    }
}
