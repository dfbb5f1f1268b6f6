// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.render;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.joml.Vector3d;

import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.geometry.solid.Mesh;

/**
 * The lines of an outline drawing: edges where a body turns away from the viewer and edges at which it is sharp, as far as nothing stands
 * before them. Parallel rays, true to scale.
 */
public final class VisibleLines {
    /** Cosine of the angle between the normals of two faces from which their edge is drawn, 30 degrees. */
    private static final double SHARP = 0.866;

    /** Vertices nearer than this are one, mm. */
    private static final double WELDED_MM = 1e-5;

    /** Triangles less high have no direction to be relied upon, mm. */
    private static final double SLIVER_MM = 2e-4;

    /** How finely an edge is looked at, mm. */
    private static final double LOOK_MM = 0.04;

    /** How far before the surface one looks from, mm. */
    private static final double OFF_MM = 0.004;

    /** A square-on face is neither turned to the viewer nor away. */
    private static final double EDGE_ON = 1e-6;

    private final Scene scene;
    private final TriangleTree tree;

    public VisibleLines(Scene scene) {
        this.scene = scene;
        tree = new TriangleTree(new TriangleSoup(scene));
    }

    /**
     * Lines as points in the plane of the drawing, mm.
     *
     * @param right which way of the ring is to the right on the drawing, of length one
     * @param up which way is up, square to it
     * @param stones whether lines of stones are asked for, or those of metal
     */
    public List<List<Point>> seen(Vector3d right, Vector3d up, boolean stones) {
        Vector3d back = right.cross(up, new Vector3d());
        LineJoiner joiner = new LineJoiner();
        for (Body body : scene.bodies()) {
            if (body.finish() instanceof Finish.Stone == stones) {
                for (Edge edge : edges(body.mesh(), back)) {
                    look(edge, right, up, back, joiner);
                }
            }
        }
        return joiner.lines();
    }

    /** @param off where one stands to look from the edge, as long as one or two normals at most */
    private record Edge(Vector3d from, Vector3d to, Vector3d off) {}

    private record Cell(long x, long y, long z) {}

    private static List<Edge> edges(Mesh mesh, Vector3d back) {
        int[] vertices = welded(mesh);
        Vector3d[] normals = new Vector3d[mesh.triangleCount()];
        Map<Long, Integer> open = new LinkedHashMap<>();
        List<Edge> edges = new ArrayList<>();
        for (int t = 0; t < normals.length; t++) {
            normals[t] = normal(mesh, t);
            for (int c = 0; c < 3; c++) {
                int a = mesh.triangles()[3 * t + c];
                int b = mesh.triangles()[3 * t + (c + 1) % 3];
                long low = Math.min(vertices[a], vertices[b]);
                long high = Math.max(vertices[a], vertices[b]);
                Integer other = open.remove(low << 32 | high);
                if (other == null) {
                    open.put(low << 32 | high, t);
                } else if (isDrawn(normals[other], normals[t], back)) {
                    Vector3d off = lifted(normals[other], back).add(lifted(normals[t], back));
                    edges.add(new Edge(at(mesh, a), at(mesh, b), off));
                }
            }
        }
        return edges;
    }

    private static boolean isDrawn(Vector3d one, Vector3d other, Vector3d back) {
        if (one.lengthSquared() == 0 || other.lengthSquared() == 0) {
            return false;
        }
        boolean oneFaces = one.dot(back) > EDGE_ON;
        boolean otherFaces = other.dot(back) > EDGE_ON;
        return oneFaces != otherFaces || (oneFaces && one.dot(other) < SHARP);
    }

    /** Before a face that is turned to the viewer, and behind the edge of one seen edge-on: what lies in line with it hides it there. */
    private static Vector3d lifted(Vector3d normal, Vector3d back) {
        double turned = normal.dot(back);
        Vector3d off = new Vector3d(normal);
        return turned > EDGE_ON ? off : turned < -EDGE_ON ? off.zero() : off.negate();
    }

    private static int[] welded(Mesh mesh) {
        Map<Cell, Integer> known = new HashMap<>();
        int[] vertices = new int[mesh.vertexCount()];
        for (int v = 0; v < vertices.length; v++) {
            Cell cell = new Cell(
                    Math.round(mesh.x(v) / WELDED_MM),
                    Math.round(mesh.y(v) / WELDED_MM),
                    Math.round(mesh.z(v) / WELDED_MM));
            Integer first = known.putIfAbsent(cell, v);
            vertices[v] = first == null ? v : first;
        }
        return vertices;
    }

    /** Of length one; nothing of a sliver. */
    private static Vector3d normal(Mesh mesh, int triangle) {
        Vector3d a = at(mesh, mesh.triangles()[3 * triangle]);
        Vector3d ab = at(mesh, mesh.triangles()[3 * triangle + 1]).sub(a);
        Vector3d ac = at(mesh, mesh.triangles()[3 * triangle + 2]).sub(a);
        double longest = Math.max(ab.length(), Math.max(ac.length(), ab.distance(ac)));
        Vector3d normal = ab.cross(ac, new Vector3d());
        double length = normal.length();
        return length > SLIVER_MM * longest ? normal.div(length) : new Vector3d();
    }

    private static Vector3d at(Mesh mesh, int vertex) {
        return new Vector3d(mesh.x(vertex), mesh.y(vertex), mesh.z(vertex));
    }

    /** Adds what is seen of an edge. */
    private void look(Edge edge, Vector3d right, Vector3d up, Vector3d back, LineJoiner joiner) {
        Point from = new Point(edge.from.dot(right), edge.from.dot(up));
        Point to = new Point(edge.to.dot(right), edge.to.dot(up));
        int looks = Math.max(1, (int) Math.ceil(from.distanceTo(to) / LOOK_MM));
        Ray ray = new Ray();
        int begun = -1;
        for (int i = 0; i <= looks; i++) {
            boolean seen = i < looks && isSeen(edge, (i + 0.5) / looks, back, ray);
            if (seen && begun < 0) {
                begun = i;
            } else if (!seen && begun >= 0) {
                joiner.add(between(from, to, (double) begun / looks), between(from, to, (double) i / looks));
                begun = -1;
            }
        }
    }

    private static Point between(Point from, Point to, double share) {
        return new Point(from.x() + share * (to.x() - from.x()), from.y() + share * (to.y() - from.y()));
    }

    private boolean isSeen(Edge edge, double share, Vector3d back, Ray ray) {
        Vector3d at = new Vector3d(edge.from)
                .lerp(edge.to, share)
                .fma(OFF_MM, edge.off)
                .fma(OFF_MM, back);
        ray.start(at.x, at.y, at.z, back.x, back.y, back.z);
        tree.cast(ray);
        return ray.triangle == Ray.NOTHING;
    }
}
