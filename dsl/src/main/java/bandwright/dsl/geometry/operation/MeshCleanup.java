// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.operation;

import java.util.Arrays;

import bandwright.dsl.geometry.solid.Mesh;
import bandwright.dsl.geometry.solid.MeshBuilder;

/**
 * Takes triangles without height out of a closed mesh and keeps it closed. They are left where bodies touch or nearly do:
 * the boolean's imagined displacement is a difference of zero in the coordinates.
 *
 * <ol>
 *   <li>Vertices at which several fans of triangles meet are split, a copy for each fan: bodies that touch along an edge
 *       share no vertex there, and every edge has two triangles.
 *   <li>Two triangles folded onto each other go, their other sides joined.
 *   <li>An edge shorter than {@link #SHORT_MM} is drawn together. Neighbours are known by side, not by vertex, so this may
 *       leave two edges between two vertices; two such edges that are both short are cut along.
 *   <li>A triangle lower than {@link #LOW_MM} gives its longest side to the neighbour there: the side is flipped.
 * </ol>
 *
 * Steps 2 to 4 are repeated while they change something. Where two edges then join the same two vertices, one of them gets
 * a vertex in its middle, so that an edge is known by its ends. No point of the surface moves by more than {@link #SHORT_MM} a step.
 */
final class MeshCleanup {
    static final double SHORT_MM = 1e-8;
    static final double LOW_MM = 1e-9;
    private static final int MOST_PASSES = 24;
    private static final int GONE = -1;

    private double[] at;
    private int vertexCount;
    private final int[] corner;
    private final int[] partner;
    private final int[] surfaces;
    private final double shortMm;
    private final double lowMm;

    private MeshCleanup(Mesh mesh, double shortMm, double lowMm) {
        this.shortMm = shortMm;
        this.lowMm = lowMm;
        at = mesh.positions().clone();
        vertexCount = mesh.vertexCount();
        corner = mesh.triangles().clone();
        surfaces = mesh.surfaces();
        HalfEdges edges = HalfEdges.of(mesh);
        partner = new int[corner.length];
        for (int h = 0; h < corner.length; h++) {
            partner[h] = edges.partner(h);
            if (partner[h] == HalfEdges.NONE) {
                throw new IllegalStateException("A boolean left an open edge");
            }
        }
    }

    static Mesh clean(Mesh mesh) {
        return clean(mesh, SHORT_MM, LOW_MM);
    }

    /** As {@link #clean(Mesh)}, with other limits. */
    static Mesh clean(Mesh mesh, double shortMm, double lowMm) {
        MeshCleanup cleanup = new MeshCleanup(mesh, shortMm, lowMm);
        cleanup.splitFans();
        for (int pass = 0; pass < MOST_PASSES; pass++) {
            boolean changed = false;
            for (int h = 0; h < cleanup.corner.length; h++) {
                if (cleanup.corner[h] != GONE) {
                    changed |= cleanup.unfold(h) || cleanup.shorten(h) || (h % 3 == 0 && cleanup.flipLow(h));
                }
            }
            if (!changed) {
                break;
            }
        }
        return cleanup.build(cleanup.doubled());
    }

    private static int next(int h) {
        return HalfEdges.next(h);
    }

    private static int previous(int h) {
        return h % 3 == 0 ? h + 2 : h - 1;
    }

    private int end(int h) {
        return corner[next(h)];
    }

    private int apex(int h) {
        return corner[previous(h)];
    }

    /** The next side that leaves the same vertex within the same fan. */
    private int turn(int h) {
        return partner[previous(h)];
    }

    private void splitFans() {
        boolean[] taken = new boolean[vertexCount];
        boolean[] seen = new boolean[corner.length];
        for (int h = 0; h < corner.length; h++) {
            if (corner[h] == GONE || seen[h]) {
                continue;
            }
            int vertex = corner[h];
            int name = vertex;
            if (taken[vertex]) {
                name = copy(vertex);
            } else {
                taken[vertex] = true;
            }
            int around = h;
            do {
                seen[around] = true;
                corner[around] = name;
                around = turn(around);
            } while (around != h);
        }
    }

    private int copy(int vertex) {
        if (3 * vertexCount == at.length) {
            at = Arrays.copyOf(at, 2 * at.length + 3);
        }
        System.arraycopy(at, 3 * vertex, at, 3 * vertexCount, 3);
        return vertexCount++;
    }

    /** If the two triangles of this side lie on each other, they go. */
    private boolean unfold(int h) {
        int k = partner[h];
        if (apex(h) != apex(k)) {
            return false;
        }
        int one = partner[next(h)];
        int other = partner[next(k)];
        join(one, partner[previous(k)]);
        join(other, partner[previous(h)]);
        drop(h);
        drop(k);
        if (corner[one] != GONE && corner[other] != GONE) {
            separate(one, other);
        }
        return true;
    }

    /** If two sides leave a vertex in different fans, the second fan gets a vertex of its own. */
    private void separate(int one, int other) {
        int around = one;
        do {
            if (around == other) {
                return;
            }
            around = turn(around);
        } while (around != one);
        int name = copy(corner[other]);
        around = other;
        do {
            corner[around] = name;
            around = turn(around);
        } while (around != other);
    }

    private void join(int a, int b) {
        partner[a] = b;
        partner[b] = a;
    }

    private void drop(int h) {
        int first = h - h % 3;
        corner[first] = GONE;
        corner[first + 1] = GONE;
        corner[first + 2] = GONE;
    }

    private boolean shorten(int h) {
        int k = partner[h];
        if (length(corner[h], end(h)) > shortMm || apex(h) == apex(k)) {
            return false;
        }
        int second = secondEdge(h);
        if (second != HalfEdges.NONE) {
            cutAlong(h, second);
            return true;
        }
        int kept = corner[h];
        int around = k;
        do {
            corner[around] = kept;
            around = turn(around);
        } while (around != k);
        join(partner[next(h)], partner[previous(h)]);
        join(partner[next(k)], partner[previous(k)]);
        drop(h);
        drop(k);
        return true;
    }

    /** Another edge between the same two vertices, if there is one. */
    private int secondEdge(int h) {
        for (int around = turn(h); around != h; around = turn(around)) {
            if (end(around) == end(h)) {
                return around;
            }
        }
        return HalfEdges.NONE;
    }

    /** Two edges between the same two places make a ring without width: the surface is cut along it and both cuts closed. */
    private void cutAlong(int h, int second) {
        int k = partner[h];
        int m = partner[second];
        join(h, m);
        join(second, k);
        separate(h, second);
        separate(k, m);
    }

    private boolean flipLow(int first) {
        int h = first;
        for (int side = first + 1; side < first + 3; side++) {
            if (length(corner[side], end(side)) > length(corner[h], end(h))) {
                h = side;
            }
        }
        if (height(h) > lowMm) {
            return false;
        }
        int k = partner[h];
        int c = apex(h);
        int d = apex(k);
        // With two corners at one place it is the short side that has to go.
        if (c == d || Math.min(length(corner[h], c), length(end(h), c)) <= shortMm) {
            return false;
        }
        int hNext = next(h);
        int kNext = next(k);
        int beyondH = partner[hNext];
        int beyondK = partner[kNext];
        corner[hNext] = d;
        corner[kNext] = c;
        join(h, beyondK);
        join(k, beyondH);
        join(hNext, kNext);
        // Triangle of h is now (a, d, c), that of k (b, c, d).
        return true;
    }

    private double length(int a, int b) {
        double dx = at[3 * b] - at[3 * a];
        double dy = at[3 * b + 1] - at[3 * a + 1];
        double dz = at[3 * b + 2] - at[3 * a + 2];
        return Math.sqrt(dx * dx + dy * dy + dz * dz);
    }

    /** Height of a triangle over one of its sides. */
    private double height(int h) {
        int a = corner[h];
        int b = end(h);
        int c = apex(h);
        double ux = at[3 * b] - at[3 * a];
        double uy = at[3 * b + 1] - at[3 * a + 1];
        double uz = at[3 * b + 2] - at[3 * a + 2];
        double vx = at[3 * c] - at[3 * a];
        double vy = at[3 * c + 1] - at[3 * a + 1];
        double vz = at[3 * c + 2] - at[3 * a + 2];
        double nx = uy * vz - uz * vy;
        double ny = uz * vx - ux * vz;
        double nz = ux * vy - uy * vx;
        double base = length(a, b);
        return base == 0 ? 0 : Math.sqrt(nx * nx + ny * ny + nz * nz) / base;
    }

    /** The sides that join the same vertices as an earlier edge; each is split in its middle. */
    private boolean[] doubled() {
        boolean[] doubled = new boolean[corner.length];
        int[] stamp = new int[vertexCount];
        Arrays.fill(stamp, GONE);
        boolean[] seen = new boolean[vertexCount];
        for (int first = 0; first < corner.length; first++) {
            if (corner[first] == GONE || seen[corner[first]]) {
                continue;
            }
            seen[corner[first]] = true;
            int h = first;
            do {
                if (stamp[end(h)] == corner[first] && !doubled[partner[h]]) {
                    doubled[h] = true;
                    doubled[partner[h]] = true;
                }
                stamp[end(h)] = corner[first];
                h = turn(h);
            } while (h != first);
        }
        return doubled;
    }

    private Mesh build(boolean[] doubled) {
        int[] index = new int[vertexCount];
        Arrays.fill(index, GONE);
        int[] middle = new int[corner.length];
        MeshBuilder builder = new MeshBuilder(vertexCount, surfaces.length);
        for (int h = 0; h < corner.length; h++) {
            int v = corner[h];
            if (v != GONE && index[v] == GONE) {
                index[v] = builder.vertex(at[3 * v], at[3 * v + 1], at[3 * v + 2]);
            }
        }
        for (int h = 0; h < corner.length; h++) {
            if (doubled[h] && h < partner[h]) {
                int a = 3 * corner[h];
                int b = 3 * end(h);
                middle[h] =
                        builder.vertex((at[a] + at[b]) / 2, (at[a + 1] + at[b + 1]) / 2, (at[a + 2] + at[b + 2]) / 2);
                middle[partner[h]] = middle[h];
            }
        }
        int[] ring = new int[6];
        for (int first = 0; first < corner.length; first += 3) {
            if (corner[first] == GONE) {
                continue;
            }
            // A corner, then the middle of the side that follows it, where there is one.
            int count = 0;
            int start = 0;
            for (int h = first; h < first + 3; h++) {
                ring[count++] = index[corner[h]];
                if (doubled[h]) {
                    start = count;
                    ring[count++] = middle[h];
                }
            }
            // A fan from a middle never lays two of its triangles along one straight side.
            for (int i = 1; i + 1 < count; i++) {
                builder.triangle(
                        ring[start], ring[(start + i) % count], ring[(start + i + 1) % count], surfaces[first / 3]);
            }
        }
        return builder.build();
    }
}
