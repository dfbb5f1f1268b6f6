// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.operation;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntConsumer;
import java.util.function.IntPredicate;

import bandwright.dsl.geometry.solid.Mesh;

/**
 * The thinnest wall of a body: the shortest straight way through it between two faces whose normals are more than 135° apart.
 *
 * <ol>
 *   <li>From the middle of each triangle a ray is sent inwards; the shortest way found is a first upper bound. Where none is found, bounds up to 4 mm
 *       are tried.
 *   <li>Each triangle is then compared with all that look away from it and lie nearer than the bound, exactly, corner
 *       against face and side against side; the bound sinks.
 *   <li>A way counts if it leaves both faces inwards and meets nothing between. Surfaces that meet in an edge sharper than 45°
 *       are not compared with each other: there the way shrinks to nothing, and that is for a check of edges to say.
 * </ol>
 *
 * The answer is exact for the faceted body; the facets of round faces leave those by 2 to 3 micrometres at the settings in use.
 */
public final class ThinnestWall {
    /** A straight way between two holes dips into a round bore by less than this share of its length. */
    private static final double CHORD_RISE = 0.02;

    /** What is thicker than the last of them is no wall. */
    private static final double[] BOUNDS_MM = {0.5, 1, 2, 4};

    private static final double LOOK_AWAY = -StrictMath.sqrt(0.5);

    /** The thinnest wall, mm, and the two points, x, y and z each, between which it was found. */
    public record Wall(
            double thicknessMm, double fromX, double fromY, double fromZ, double toX, double toY, double toZ) {}

    private final Mesh whole;
    private final IntPredicate leftOut;
    private final BoxTree tree;
    private final double[] normals;
    private final Set<Long> sharpPairs = new HashSet<>();
    private final SegmentDistance distance = new SegmentDistance();
    private double best = Double.POSITIVE_INFINITY;
    private final double[] bestFrom = new double[3];
    private final double[] bestTo = new double[3];

    private ThinnestWall(Mesh whole, IntPredicate leftOut) {
        this.whole = whole;
        this.leftOut = leftOut;
        this.tree = BoxTree.ofTriangles(whole);
        this.normals = normals(whole);
        findSharpPairs();
    }

    /**
     * @param sample triangles of which all of the body's are copies by symmetry, or the body itself
     * @param whole the closed body
     */
    public static Optional<Wall> of(Mesh sample, Mesh whole) {
        return of(sample, whole, surface -> false);
    }

    /** @param leftOut surfaces between which and any other no wall is looked for */
    public static Optional<Wall> of(Mesh sample, Mesh whole, IntPredicate leftOut) {
        ThinnestWall search = new ThinnestWall(whole, leftOut);
        double[] sampleNormals = normals(sample);
        for (int t = 0; t < sample.triangleCount(); t++) {
            search.lookInwards(sample, t, sampleNormals);
        }
        if (search.best < Double.POSITIVE_INFINITY) {
            search.compareAll(sample, sampleNormals);
        } else if (!search.compareWithin(sample, sampleNormals)) {
            return Optional.empty();
        }
        double[] a = search.bestFrom;
        double[] b = search.bestTo;
        return Optional.of(new Wall(search.best, a[0], a[1], a[2], b[0], b[1], b[2]));
    }

    private static double[] normals(Mesh mesh) {
        double[] normals = new double[3 * mesh.triangleCount()];
        double[] p = mesh.positions();
        for (int t = 0; t < mesh.triangleCount(); t++) {
            int a = 3 * mesh.triangles()[3 * t];
            int b = 3 * mesh.triangles()[3 * t + 1];
            int c = 3 * mesh.triangles()[3 * t + 2];
            double ux = p[b] - p[a];
            double uy = p[b + 1] - p[a + 1];
            double uz = p[b + 2] - p[a + 2];
            double vx = p[c] - p[a];
            double vy = p[c + 1] - p[a + 1];
            double vz = p[c + 2] - p[a + 2];
            double nx = uy * vz - uz * vy;
            double ny = uz * vx - ux * vz;
            double nz = ux * vy - uy * vx;
            double size = Math.sqrt(nx * nx + ny * ny + nz * nz);
            normals[3 * t] = nx / size;
            normals[3 * t + 1] = ny / size;
            normals[3 * t + 2] = nz / size;
        }
        return normals;
    }

    private void findSharpPairs() {
        HalfEdges edges = HalfEdges.of(whole);
        for (int h = 0; h < edges.count(); h++) {
            int s = h / 3;
            int t = edges.partner(h) / 3;
            if (dot(normals, s, normals, t) < LOOK_AWAY) {
                sharpPairs.add(pair(whole.surfaces()[s], whole.surfaces()[t]));
            }
        }
    }

    private static long pair(int a, int b) {
        return (long) Math.min(a, b) << 32 | Math.max(a, b);
    }

    private static double dot(double[] a, int s, double[] b, int t) {
        return a[3 * s] * b[3 * t] + a[3 * s + 1] * b[3 * t + 1] + a[3 * s + 2] * b[3 * t + 2];
    }

    private void lookInwards(Mesh sample, int t, double[] sampleNormals) {
        if (leftOut.test(sample.surfaces()[t])) {
            return;
        }
        double[] from = new double[3];
        for (int axis = 0; axis < 3; axis++) {
            for (int i = 0; i < 3; i++) {
                from[axis] += sample.positions()[3 * sample.triangles()[3 * t + i] + axis] / 3;
            }
        }
        double reach = Math.min(best, 20);
        double[] to = new double[3];
        for (int axis = 0; axis < 3; axis++) {
            to[axis] = from[axis] - reach * sampleNormals[3 * t + axis];
        }
        double[] nearest = {2};
        int[] hit = {-1};
        queryBox(from, to, 0, face -> {
            double share = distance.crossing(whole, face, from, to);
            if (share > 1e-9 && share < nearest[0]) {
                nearest[0] = share;
                hit[0] = face;
            }
        });
        if (hit[0] >= 0
                && !leftOut.test(whole.surfaces()[hit[0]])
                && dot(sampleNormals, t, normals, hit[0]) < LOOK_AWAY
                && !sharpPairs.contains(pair(sample.surfaces()[t], whole.surfaces()[hit[0]]))
                && nearest[0] * reach < best) {
            // A ray from the middle of a face starts in the metal behind it.
            best = nearest[0] * reach;
            for (int axis = 0; axis < 3; axis++) {
                bestFrom[axis] = from[axis];
                bestTo[axis] = from[axis] + nearest[0] * (to[axis] - from[axis]);
            }
        }
    }

    private void compareAll(Mesh sample, double[] sampleNormals) {
        for (int t = 0; t < sample.triangleCount(); t++) {
            compare(sample, t, sampleNormals);
        }
    }

    /** Where no ray met a face that counts, and so nothing bounds the search: wider and wider, for each with each would take minutes. */
    private boolean compareWithin(Mesh sample, double[] sampleNormals) {
        for (double bound : BOUNDS_MM) {
            best = bound;
            compareAll(sample, sampleNormals);
            if (best < bound) {
                return true;
            }
        }
        return false;
    }

    private void compare(Mesh sample, int t, double[] sampleNormals) {
        if (leftOut.test(sample.surfaces()[t])) {
            return;
        }
        double[] low = new double[3];
        double[] high = new double[3];
        for (int axis = 0; axis < 3; axis++) {
            double a = sample.positions()[3 * sample.triangles()[3 * t] + axis];
            double b = sample.positions()[3 * sample.triangles()[3 * t + 1] + axis];
            double c = sample.positions()[3 * sample.triangles()[3 * t + 2] + axis];
            low[axis] = Math.min(a, Math.min(b, c));
            high[axis] = Math.max(a, Math.max(b, c));
        }
        queryBox(low, high, Math.min(best, 1e3), face -> {
            if (dot(sampleNormals, t, normals, face) >= LOOK_AWAY
                    || leftOut.test(whole.surfaces()[face])
                    || sharpPairs.contains(pair(sample.surfaces()[t], whole.surfaces()[face]))
                    || !distance.between(sample, t, whole, face, best)) {
                return;
            }
            double[] way = new double[3];
            for (int axis = 0; axis < 3; axis++) {
                way[axis] = distance.to[axis] - distance.from[axis];
            }
            double inwards = way[0] * sampleNormals[3 * t]
                    + way[1] * sampleNormals[3 * t + 1]
                    + way[2] * sampleNormals[3 * t + 2];
            double outwards =
                    way[0] * normals[3 * face] + way[1] * normals[3 * face + 1] + way[2] * normals[3 * face + 2];
            if (inwards < 0 && outwards > 0 && isClear(distance.from.clone(), distance.to.clone())) {
                best = distance.length;
                System.arraycopy(distance.from, 0, bestFrom, 0, 3);
                System.arraycopy(distance.to, 0, bestTo, 0, 3);
            }
        });
    }

    /** Whether a way from face to face meets no other face between its ends and runs through metal, not through air. */
    private boolean isClear(double[] from, double[] to) {
        boolean[] clear = {true};
        queryBox(from, to, 0, face -> {
            double share = distance.crossing(whole, face, from, to);
            clear[0] &= !(share > 1e-6 && share < 1 - 1e-6);
        });
        return clear[0] && isInMetal((from[0] + to[0]) / 2, (from[1] + to[1]) / 2, (from[2] + to[2]) / 2);
    }

    /** Whether the middle of a way lies in the metal, or as near to it as a chord comes to the bore that it spans. */
    private boolean isInMetal(double x, double y, double z) {
        double near = CHORD_RISE * distance.length;
        boolean[] grazes = {false};
        tree.query(x - near, y - near, z - near, x + near, y + near, z + near, face -> grazes[0] = true);
        return grazes[0] || isInside(x, y, z);
    }

    /** A point is inside if a ray from it leaves the body once more than it enters; the ray's direction favours no axis. */
    private boolean isInside(double x, double y, double z) {
        double[] start = {x, y, z};
        double[] end = {x + 41.3, y + 59.7, z + 72.1};
        int[] crossings = {0};
        queryBox(start, end, 0, face -> crossings[0] += distance.crossing(whole, face, start, end) > 0 ? 1 : 0);
        return crossings[0] % 2 == 1;
    }

    private void queryBox(double[] a, double[] b, double margin, IntConsumer found) {
        tree.query(
                Math.min(a[0], b[0]) - margin,
                Math.min(a[1], b[1]) - margin,
                Math.min(a[2], b[2]) - margin,
                Math.max(a[0], b[0]) + margin,
                Math.max(a[1], b[1]) + margin,
                Math.max(a[2], b[2]) + margin,
                found);
    }
}
