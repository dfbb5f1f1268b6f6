// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.operation;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.geometry.plane.Region;
import bandwright.dsl.geometry.solid.Mesh;

/**
 * The cut through a closed body by the half-plane from the z axis at an angle, as a region: its x is z, its y the distance from
 * the axis. Vertices on the plane count as before it, so every loop closes; the loops follow the mesh's edges by index.
 */
public final class HalfPlaneSlice {
    /** Loops smaller than this, mm², come from triangles that only touch the plane. */
    private static final double SPECK_MM2 = 1e-9;

    private HalfPlaneSlice() {}

    public static Region of(Mesh mesh, double radians) {
        double cos = StrictMath.cos(radians);
        double sin = StrictMath.sin(radians);
        double[] height = new double[mesh.vertexCount()];
        for (int v = 0; v < height.length; v++) {
            height[v] = mesh.y(v) * cos - mesh.x(v) * sin;
        }
        Map<Long, Long> next = new LinkedHashMap<>();
        int[] corners = mesh.triangles();
        for (int t = 0; t < mesh.triangleCount(); t++) {
            long rising = -1;
            long falling = -1;
            for (int i = 0; i < 3; i++) {
                int a = corners[3 * t + i];
                int b = corners[3 * t + (i + 1) % 3];
                if (height[a] < 0 && height[b] >= 0) {
                    rising = key(a, b);
                } else if (height[a] >= 0 && height[b] < 0) {
                    falling = key(a, b);
                }
            }
            if (rising >= 0) {
                next.put(falling, rising);
            }
        }
        return region(mesh, height, cos, sin, next);
    }

    private static Region region(Mesh mesh, double[] height, double cos, double sin, Map<Long, Long> next) {
        List<Outline> outers = new ArrayList<>();
        List<Outline> holes = new ArrayList<>();
        Map<Long, Long> left = new HashMap<>(next);
        for (Long first : next.keySet()) {
            List<Point> points = new ArrayList<>();
            Long at = first;
            while (at != null && left.containsKey(at)) {
                Point point = point(mesh, height, cos, sin, at);
                if (points.isEmpty() || points.get(points.size() - 1).distanceTo(point) > 1e-9) {
                    points.add(point);
                }
                at = left.remove(at);
            }
            if (points.size() > 1 && points.get(0).distanceTo(points.get(points.size() - 1)) <= 1e-9) {
                points.remove(points.size() - 1);
            }
            boolean onThisSide = points.stream().allMatch(point -> point.y() > 0);
            if (points.size() < 3 || !onThisSide) {
                continue;
            }
            Outline outline = Outline.polygon(points);
            double area = outline.moments().area();
            if (area > SPECK_MM2) {
                outers.add(outline);
            } else if (area < -SPECK_MM2) {
                holes.add(outline);
            }
        }
        return nested(outers, holes);
    }

    /** Each hole goes to the smallest outer loop whose box holds it. */
    private static Region nested(List<Outline> outers, List<Outline> holes) {
        List<Region.Piece> pieces = new ArrayList<>();
        for (Outline outer : outers) {
            List<Outline> own = holes.stream()
                    .filter(hole -> holds(outer, hole)
                            && outers.stream()
                                    .noneMatch(other -> holds(other, hole)
                                            && other.moments().area()
                                                    < outer.moments().area()))
                    .toList();
            pieces.add(new Region.Piece(outer, own));
        }
        return new Region(pieces);
    }

    private static boolean holds(Outline outer, Outline hole) {
        var box = outer.bounds();
        var inner = hole.bounds();
        return box.minX() <= inner.minX()
                && box.maxX() >= inner.maxX()
                && box.minY() <= inner.minY()
                && box.maxY() >= inner.maxY();
    }

    private static long key(int a, int b) {
        return (long) Math.min(a, b) << 32 | Math.max(a, b);
    }

    private static Point point(Mesh mesh, double[] height, double cos, double sin, long edge) {
        int a = (int) (edge >>> 32);
        int b = (int) edge;
        double share = height[a] / (height[a] - height[b]);
        double x = mesh.x(a) + share * (mesh.x(b) - mesh.x(a));
        double y = mesh.y(a) + share * (mesh.y(b) - mesh.y(a));
        return new Point(mesh.z(a) + share * (mesh.z(b) - mesh.z(a)), x * cos + y * sin);
    }
}
