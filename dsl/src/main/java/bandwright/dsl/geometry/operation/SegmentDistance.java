// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.operation;

import bandwright.dsl.geometry.solid.Mesh;

/** Shortest ways between triangles, and where a segment passes through one. Leaves the place in its fields. */
final class SegmentDistance {
    final double[] from = new double[3];
    final double[] to = new double[3];
    double length;

    private final double[] pointA = new double[3];
    private final double[] pointB = new double[3];

    /**
     * Whether two triangles that do not cross come nearer to each other than a bound; the shortest way is left in the fields.
     */
    boolean between(Mesh a, int s, Mesh b, int t, double bound) {
        double[] p = a.positions();
        double[] q = b.positions();
        double least = bound * bound;
        if (boxDistance(p, a.triangles(), 3 * s, q, b.triangles(), 3 * t) >= least) {
            return false;
        }
        boolean found = false;
        for (int i = 0; i < 3; i++) {
            int a0 = 3 * a.triangles()[3 * s + i];
            int a1 = 3 * a.triangles()[3 * s + (i + 1) % 3];
            for (int j = 0; j < 3; j++) {
                int b0 = 3 * b.triangles()[3 * t + j];
                int b1 = 3 * b.triangles()[3 * t + (j + 1) % 3];
                double squared = segments(p, a0, a1, q, b0, b1);
                if (squared < least) {
                    least = squared;
                    found = true;
                    keep(pointA, pointB);
                }
            }
        }
        for (int i = 0; i < 3; i++) {
            double squared = cornerAndFace(p, 3 * a.triangles()[3 * s + i], b, t);
            if (squared < least) {
                least = squared;
                found = true;
                keep(pointA, pointB);
            }
            squared = cornerAndFace(q, 3 * b.triangles()[3 * t + i], a, s);
            if (squared < least) {
                least = squared;
                found = true;
                keep(pointB, pointA);
            }
        }
        length = Math.sqrt(least);
        return found;
    }

    private void keep(double[] a, double[] b) {
        System.arraycopy(a, 0, from, 0, 3);
        System.arraycopy(b, 0, to, 0, 3);
    }

    private static double boxDistance(double[] p, int[] a, int s, double[] q, int[] b, int t) {
        double sum = 0;
        for (int axis = 0; axis < 3; axis++) {
            double a0 = p[3 * a[s] + axis];
            double a1 = p[3 * a[s + 1] + axis];
            double a2 = p[3 * a[s + 2] + axis];
            double b0 = q[3 * b[t] + axis];
            double b1 = q[3 * b[t + 1] + axis];
            double b2 = q[3 * b[t + 2] + axis];
            double apart = Math.max(
                    Math.min(a0, Math.min(a1, a2)) - Math.max(b0, Math.max(b1, b2)),
                    Math.min(b0, Math.min(b1, b2)) - Math.max(a0, Math.max(a1, a2)));
            sum += apart > 0 ? apart * apart : 0;
        }
        return sum;
    }

    /** Squared distance of two segments: V. J. Lumelsky, "On fast computation of distance between line segments", 1985. */
    private double segments(double[] p, int a0, int a1, double[] q, int b0, int b1) {
        double d1d1 = 0;
        double d2d2 = 0;
        double d1d2 = 0;
        double d1r = 0;
        double d2r = 0;
        for (int axis = 0; axis < 3; axis++) {
            double d1 = p[a1 + axis] - p[a0 + axis];
            double d2 = q[b1 + axis] - q[b0 + axis];
            double r = p[a0 + axis] - q[b0 + axis];
            d1d1 += d1 * d1;
            d2d2 += d2 * d2;
            d1d2 += d1 * d2;
            d1r += d1 * r;
            d2r += d2 * r;
        }
        double denominator = d1d1 * d2d2 - d1d2 * d1d2;
        double s = denominator > 0 ? clamp((d1d2 * d2r - d1r * d2d2) / denominator) : 0;
        double t = (d1d2 * s + d2r) / d2d2;
        if (t < 0) {
            t = 0;
            s = clamp(-d1r / d1d1);
        } else if (t > 1) {
            t = 1;
            s = clamp((d1d2 - d1r) / d1d1);
        }
        double sum = 0;
        for (int axis = 0; axis < 3; axis++) {
            pointA[axis] = p[a0 + axis] + s * (p[a1 + axis] - p[a0 + axis]);
            pointB[axis] = q[b0 + axis] + t * (q[b1 + axis] - q[b0 + axis]);
            double d = pointB[axis] - pointA[axis];
            sum += d * d;
        }
        return sum;
    }

    private static double clamp(double share) {
        return Math.max(0, Math.min(1, share));
    }

    /** Squared distance of a point from a triangle's plane where its foot lies inside; infinite elsewhere: sides are compared anyway. */
    private double cornerAndFace(double[] p, int corner, Mesh mesh, int t) {
        double[] q = mesh.positions();
        int a = 3 * mesh.triangles()[3 * t];
        int b = 3 * mesh.triangles()[3 * t + 1];
        int c = 3 * mesh.triangles()[3 * t + 2];
        double ux = q[b] - q[a];
        double uy = q[b + 1] - q[a + 1];
        double uz = q[b + 2] - q[a + 2];
        double vx = q[c] - q[a];
        double vy = q[c + 1] - q[a + 1];
        double vz = q[c + 2] - q[a + 2];
        double wx = p[corner] - q[a];
        double wy = p[corner + 1] - q[a + 1];
        double wz = p[corner + 2] - q[a + 2];
        double uu = ux * ux + uy * uy + uz * uz;
        double uv = ux * vx + uy * vy + uz * vz;
        double vv = vx * vx + vy * vy + vz * vz;
        double wu = wx * ux + wy * uy + wz * uz;
        double wv = wx * vx + wy * vy + wz * vz;
        double denominator = uu * vv - uv * uv;
        double s = (wu * vv - wv * uv) / denominator;
        double r = (wv * uu - wu * uv) / denominator;
        if (!(s >= 0 && r >= 0 && s + r <= 1)) {
            return Double.POSITIVE_INFINITY;
        }
        pointA[0] = p[corner];
        pointA[1] = p[corner + 1];
        pointA[2] = p[corner + 2];
        pointB[0] = q[a] + s * ux + r * vx;
        pointB[1] = q[a + 1] + s * uy + r * vy;
        pointB[2] = q[a + 2] + s * uz + r * vz;
        double dx = pointB[0] - pointA[0];
        double dy = pointB[1] - pointA[1];
        double dz = pointB[2] - pointA[2];
        return dx * dx + dy * dy + dz * dz;
    }

    /**
     * The share of the way along a segment at which it passes through a triangle, or NaN (T. Möller, B. Trumbore, "Fast, minimum
     * storage ray-triangle intersection", 1997).
     */
    double crossing(Mesh mesh, int t, double[] start, double[] end) {
        double[] q = mesh.positions();
        int a = 3 * mesh.triangles()[3 * t];
        int b = 3 * mesh.triangles()[3 * t + 1];
        int c = 3 * mesh.triangles()[3 * t + 2];
        double dx = end[0] - start[0];
        double dy = end[1] - start[1];
        double dz = end[2] - start[2];
        double ux = q[b] - q[a];
        double uy = q[b + 1] - q[a + 1];
        double uz = q[b + 2] - q[a + 2];
        double vx = q[c] - q[a];
        double vy = q[c + 1] - q[a + 1];
        double vz = q[c + 2] - q[a + 2];
        double hx = dy * vz - dz * vy;
        double hy = dz * vx - dx * vz;
        double hz = dx * vy - dy * vx;
        double det = ux * hx + uy * hy + uz * hz;
        if (det == 0) {
            return Double.NaN;
        }
        double sx = start[0] - q[a];
        double sy = start[1] - q[a + 1];
        double sz = start[2] - q[a + 2];
        double s = (sx * hx + sy * hy + sz * hz) / det;
        double kx = sy * uz - sz * uy;
        double ky = sz * ux - sx * uz;
        double kz = sx * uy - sy * ux;
        double r = (dx * kx + dy * ky + dz * kz) / det;
        if (s < 0 || r < 0 || s + r > 1) {
            return Double.NaN;
        }
        return (vx * kx + vy * ky + vz * kz) / det;
    }
}
