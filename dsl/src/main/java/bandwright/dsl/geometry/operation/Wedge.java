// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.operation;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

import bandwright.dsl.geometry.solid.Mesh;
import bandwright.dsl.geometry.solid.MeshBuilder;
import bandwright.dsl.geometry.solid.MeshMeasures;

/**
 * The part of a body between two half-planes through the z axis, from which the whole body follows by mirroring and turning.
 * It is open on the two planes: what lies there is shared with its mirror image, by index, so that copies join without a
 * comparison of coordinates.
 *
 * @see #of
 */
public final class Wedge {
    /** Vertices nearer to a plane than this are put on it, so that no sliver is cut off beside it. */
    private static final double ON_PLANE_MM = 1e-7;

    /** Where a vertex lies: 0 within the wedge, or on one of its planes. */
    private static final byte ON_FIRST = 1;

    private static final byte ON_SECOND = 2;

    private final Mesh open;
    private final byte[] side;
    private final int folds;

    private Wedge(Mesh open, byte[] side, int folds) {
        this.open = open;
        this.side = side;
        this.folds = folds;
    }

    /**
     * Cuts the wedge from angle 0 to π / folds out of a body that reaches over both planes.
     *
     * @param folds how often the body repeats in a full turn, its mirror image not counted
     */
    public static Wedge of(Mesh body, int folds) {
        double angle = StrictMath.PI / folds;
        if (folds == 1) {
            // Both half-planes make one plane: the sign of x tells them apart.
            Clip clip = new Clip(body, new byte[body.vertexCount()], 0, 1, ON_FIRST);
            byte[] side = clip.side();
            Mesh mesh = clip.mesh();
            for (int v = 0; v < side.length; v++) {
                if (side[v] == ON_FIRST && mesh.x(v) < 0) {
                    side[v] = ON_SECOND;
                }
            }
            return new Wedge(mesh, side, folds);
        }
        Clip first = new Clip(body, new byte[body.vertexCount()], 0, 1, ON_FIRST);
        Clip second = new Clip(first.mesh(), first.side(), StrictMath.sin(angle), -StrictMath.cos(angle), ON_SECOND);
        return new Wedge(second.mesh(), second.side(), folds);
    }

    /** Volume in mm³ of the whole body. Faces on planes through the origin would add nothing, so their absence takes nothing. */
    public double wholeVolume() {
        return 2 * folds * MeshMeasures.volume(open);
    }

    /**
     * Whether copies will join to a closed body: each edge has a neighbour, or lies on one of the planes, where its mirror image is
     * its neighbour, but never both.
     */
    public boolean isSound() {
        HalfEdges edges = HalfEdges.of(open);
        for (int h = 0; h < edges.count(); h++) {
            byte here = side[edges.start(h)];
            boolean onPlane = here != 0 && here == side[edges.end(h)];
            if (onPlane != (edges.partner(h) == HalfEdges.NONE)) {
                return false;
            }
        }
        return true;
    }

    /** The triangles of the wedge alone. */
    public Mesh open() {
        return open;
    }

    /** The whole body: the wedge and its mirror image in the first plane, turned round by each of the folds. */
    public Mesh whole() {
        int n = open.vertexCount();
        int[][] index = new int[2 * folds][n];
        MeshBuilder builder = new MeshBuilder(2 * folds * n, 2 * folds * open.triangleCount());
        for (int fold = 0; fold < folds; fold++) {
            double cos = StrictMath.cos(2 * StrictMath.PI * fold / folds);
            double sin = StrictMath.sin(2 * StrictMath.PI * fold / folds);
            for (int image = 0; image < 2; image++) {
                int[] own = index[2 * fold + image];
                for (int v = 0; v < n; v++) {
                    if (image == 1 && side[v] == ON_FIRST) {
                        own[v] = index[2 * fold][v];
                    } else if (image == 1 && side[v] == ON_SECOND && fold > 0) {
                        own[v] = index[2 * fold - 2][v];
                    } else if (image == 0 && side[v] == ON_SECOND && fold == folds - 1) {
                        // The last wedge closes onto the first mirror image, which for one fold is its own.
                        own[v] = fold == 0 ? add(builder, v, cos, sin, 1) : index[1][v];
                    } else if (image == 1 && side[v] == ON_SECOND && folds == 1) {
                        own[v] = index[0][v];
                    } else {
                        own[v] = add(builder, v, cos, sin, image == 0 ? 1 : -1);
                    }
                }
            }
        }
        int[] corners = open.triangles();
        for (int copy = 0; copy < 2 * folds; copy++) {
            int[] own = index[copy];
            for (int t = 0; t < open.triangleCount(); t++) {
                int a = own[corners[3 * t]];
                int b = own[corners[3 * t + 1]];
                int c = own[corners[3 * t + 2]];
                boolean image = copy % 2 == 1;
                builder.triangle(a, image ? c : b, image ? b : c, open.surfaces()[t]);
            }
        }
        return builder.build();
    }

    private int add(MeshBuilder builder, int v, double cos, double sin, int mirror) {
        double x = open.x(v);
        double y = mirror * open.y(v);
        return builder.vertex(x * cos - y * sin, x * sin + y * cos, open.z(v));
    }

    /** One cut by a plane through the z axis: the side on which x·nx + y·ny is positive stays, open along the plane. */
    private static final class Clip {
        private final Mesh body;
        private final double[] height;
        private final MeshBuilder builder;
        private final int[] kept;
        private final byte mark;
        private byte[] side;

        /** Crossings, one an edge, found by the edge's ends. */
        private final Map<Long, Integer> crossings = new HashMap<>();

        Clip(Mesh body, byte[] sideBefore, double nx, double ny, byte mark) {
            this.body = body;
            this.mark = mark;
            this.height = new double[body.vertexCount()];
            this.builder = new MeshBuilder(body.vertexCount(), body.triangleCount());
            this.kept = new int[body.vertexCount()];
            this.side = new byte[body.vertexCount() + 16];
            for (int v = 0; v < body.vertexCount(); v++) {
                double h = body.x(v) * nx + body.y(v) * ny;
                height[v] = Math.abs(h) < ON_PLANE_MM ? 0 : h;
                kept[v] = -1;
                if (height[v] >= 0) {
                    double back = height[v] == 0 ? h : 0;
                    kept[v] = add(
                            body.x(v) - back * nx,
                            body.y(v) - back * ny,
                            body.z(v),
                            height[v] == 0 ? mark : sideBefore[v]);
                }
            }
            for (int t = 0; t < body.triangleCount(); t++) {
                clip(t);
            }
        }

        private int add(double x, double y, double z, byte where) {
            int v = builder.vertex(x, y, z);
            if (v == side.length) {
                side = Arrays.copyOf(side, 2 * v);
            }
            side[v] = where;
            return v;
        }

        Mesh mesh() {
            return builder.build();
        }

        byte[] side() {
            return Arrays.copyOf(side, builder.vertexCount());
        }

        private void clip(int t) {
            int[] corners = body.triangles();
            int surface = body.surfaces()[t];
            boolean above = false;
            boolean below = false;
            for (int i = 0; i < 3; i++) {
                above |= height[corners[3 * t + i]] > 0;
                below |= height[corners[3 * t + i]] < 0;
            }
            if (!above) {
                return;
            }
            if (!below) {
                builder.triangle(kept[corners[3 * t]], kept[corners[3 * t + 1]], kept[corners[3 * t + 2]], surface);
                return;
            }
            int[] ring = new int[4];
            int count = 0;
            for (int i = 0; i < 3; i++) {
                int a = corners[3 * t + i];
                int b = corners[3 * t + (i + 1) % 3];
                if (height[a] >= 0) {
                    ring[count++] = kept[a];
                }
                if (height[a] * height[b] < 0) {
                    ring[count++] = crossing(Math.min(a, b), Math.max(a, b));
                }
            }
            for (int i = 1; i + 1 < count; i++) {
                builder.triangle(ring[0], ring[i], ring[i + 1], surface);
            }
        }

        private int crossing(int a, int b) {
            return crossings.computeIfAbsent((long) a << 32 | b, key -> {
                double share = height[a] / (height[a] - height[b]);
                return add(
                        body.x(a) + share * (body.x(b) - body.x(a)),
                        body.y(a) + share * (body.y(b) - body.y(a)),
                        body.z(a) + share * (body.z(b) - body.z(a)),
                        mark);
            });
        }
    }
}
