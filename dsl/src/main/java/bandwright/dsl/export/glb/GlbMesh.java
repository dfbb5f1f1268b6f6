// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.export.glb;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import bandwright.dsl.construct.Surfaces;
import bandwright.dsl.geometry.solid.Mesh;
import bandwright.dsl.view.render.CornerNormals;

/**
 * A mesh as a file wants it: a vertex for every pair of a place and a normal, triangles in the order of the faces that they belong to.
 *
 * @param positions three numbers a vertex, mm
 * @param normals three numbers a vertex, of length one
 * @param faces where each face begins
 * @param step that all positions are multiples of, mm; 0 if they are of none
 */
@SuppressWarnings("ArrayRecordComponent")
record GlbMesh(float[] positions, float[] normals, int[] triangles, List<FaceStart> faces, double step) {
    /** Of a number in a short one; a power of two, so that a multiple of it is the same number in the mesh and in the file. */
    private static final double FINEST_STEP_MM = 1.0 / 2048;

    /** Of a direction that is told in eight bits. */
    private static final float DIRECTION_STEPS = 127;

    /** @param definition what made the face, and {@code what} of it; the triangles from this one on belong to it */
    record FaceStart(String definition, String what, int triangle) {}

    /** One corner: its vertex in the mesh it comes from, and the normal there, by their bits. */
    private record Corner(int vertex, int x, int y, int z) {}

    /** All of a stone: every facet is flat, and nobody asks what made it. */
    static GlbMesh ofStone(Mesh mesh) {
        List<Integer> all = new ArrayList<>();
        for (int t = 0; t < mesh.triangleCount(); t++) {
            all.add(t);
        }
        return of(mesh, true, all, List.of(), 0);
    }

    /** All of a mesh, its places and directions rounded, so that corners that hardly differ are one. */
    static GlbMesh inSteps(Mesh mesh, Surfaces surfaces) {
        double furthest = 0;
        for (int v = 0; v < mesh.vertexCount(); v++) {
            furthest = Math.max(
                    furthest, Math.max(Math.abs(mesh.x(v)), Math.max(Math.abs(mesh.y(v)), Math.abs(mesh.z(v)))));
        }
        double step = FINEST_STEP_MM;
        while (furthest / step >= Short.MAX_VALUE) {
            step *= 2;
        }
        return ofRepeat(mesh, surfaces, 1, 0, step);
    }

    /**
     * What lies between an angle and the next repeat; normals are those of the whole, so that repeats join without a seam.
     *
     * @param repeats 1 takes all
     */
    static GlbMesh ofRepeat(Mesh mesh, Surfaces surfaces, int repeats, double from) {
        return ofRepeat(mesh, surfaces, repeats, from, 0);
    }

    private static GlbMesh ofRepeat(Mesh mesh, Surfaces surfaces, int repeats, double from, double step) {
        List<Integer> chosen = new ArrayList<>();
        for (int t = 0; t < mesh.triangleCount(); t++) {
            if (repeats == 1 || isIn(mesh, t, repeats, from)) {
                chosen.add(t);
            }
        }
        // Numbers of faces depend on what was made before; names do not.
        chosen.sort(Comparator.comparing((Integer t) -> face(surfaces, mesh, t).definition())
                .thenComparing(t -> face(surfaces, mesh, t).what()));
        List<FaceStart> faces = new ArrayList<>();
        for (int at = 0; at < chosen.size(); at++) {
            Surfaces.Face face = face(surfaces, mesh, chosen.get(at));
            if (at == 0 || !face.equals(face(surfaces, mesh, chosen.get(at - 1)))) {
                faces.add(new FaceStart(face.definition(), face.what(), at));
            }
        }
        return of(mesh, false, chosen, faces, step);
    }

    private static Surfaces.Face face(Surfaces surfaces, Mesh mesh, int triangle) {
        return surfaces.face(mesh.surfaces()[triangle]);
    }

    /** By the middle of the triangle, which never lies where repeats meet. */
    private static boolean isIn(Mesh mesh, int triangle, int repeats, double from) {
        double x = 0;
        double y = 0;
        for (int c = 0; c < 3; c++) {
            x += mesh.x(mesh.triangles()[3 * triangle + c]);
            y += mesh.y(mesh.triangles()[3 * triangle + c]);
        }
        double turn = 2 * StrictMath.PI;
        double angle = StrictMath.atan2(y, x) - from;
        return angle - turn * Math.floor(angle / turn) < turn / repeats;
    }

    private static GlbMesh of(Mesh mesh, boolean flat, List<Integer> chosen, List<FaceStart> faces, double step) {
        float[] normals = new float[9 * mesh.triangleCount()];
        CornerNormals.write(mesh, flat, normals, 0);
        for (int i = 0; step > 0 && i < normals.length; i++) {
            normals[i] = Math.round(normals[i] * DIRECTION_STEPS) / DIRECTION_STEPS;
        }
        Map<Corner, Integer> known = new HashMap<>();
        List<Float> positions = new ArrayList<>();
        List<Float> directions = new ArrayList<>();
        int[] triangles = new int[3 * chosen.size()];
        int filled = 0;
        for (int t : chosen) {
            if (isFlat(normals, 9 * t)) {
                continue;
            }
            for (int c = 0; c < 3; c++) {
                int vertex = mesh.triangles()[3 * t + c];
                int at = 9 * t + 3 * c;
                Corner corner = new Corner(
                        vertex,
                        Float.floatToIntBits(normals[at]),
                        Float.floatToIntBits(normals[at + 1]),
                        Float.floatToIntBits(normals[at + 2]));
                Integer index = known.get(corner);
                if (index == null) {
                    index = known.size();
                    known.put(corner, index);
                    positions.add(rounded(mesh.x(vertex), step));
                    positions.add(rounded(mesh.y(vertex), step));
                    positions.add(rounded(mesh.z(vertex), step));
                    directions.add(normals[at]);
                    directions.add(normals[at + 1]);
                    directions.add(normals[at + 2]);
                }
                triangles[filled++] = index;
            }
        }
        if (filled != triangles.length) {
            throw new IllegalStateException("A mesh has a triangle without area");
        }
        return new GlbMesh(floats(positions), floats(directions), triangles, faces, step);
    }

    /** A normal that is none: a triangle without area has no direction of its own. */
    private static boolean isFlat(float[] normals, int at) {
        return normals[at] == 0 && normals[at + 1] == 0 && normals[at + 2] == 0;
    }

    private static float[] floats(List<Float> values) {
        float[] array = new float[values.size()];
        for (int i = 0; i < array.length; i++) {
            array[i] = values.get(i);
        }
        return array;
    }

    private static float rounded(double value, double step) {
        return (float) (step > 0 ? Math.round(value / step) * step : value);
    }

    boolean isInSteps() {
        return step > 0;
    }

    int vertexCount() {
        return positions.length / 3;
    }
}
