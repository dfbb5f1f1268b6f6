// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.operation;

import bandwright.dsl.geometry.solid.Mesh;
import bandwright.dsl.geometry.solid.MeshBuilder;

/**
 * Union, difference and intersection of two closed meshes. The result is closed whatever the bodies' position: see
 * {@link Shadows}. Neither body may overlap itself.
 *
 * <ol>
 *   <li>{@link Crossings}: every edge of one body against the faces of the other near it.
 *   <li>{@link Windings}: which vertices of each lie inside the other.
 *   <li>{@link BooleanAssembly}: what is kept of each edge, and the new edges along which faces meet; every face's new
 *       outline; {@link FaceTriangulator} cuts each into triangles.
 *   <li>{@link MeshCleanup}: triangles without height, left where bodies touch, are taken out.
 * </ol>
 *
 * Cost: n log n in the number of triangles, plus what meets.
 */
public final class SolidBoolean {
    /** Which of three results; the numbers are the weights of Smith and Dodgson's inclusion sums. */
    enum Kind {
        UNION(1, 1, -1),
        DIFFERENCE(1, 0, -1),
        INTERSECTION(0, 0, 1);

        final int baseOfFirst;
        final int baseOfSecond;
        final int sign;

        Kind(int baseOfFirst, int baseOfSecond, int sign) {
            this.baseOfFirst = baseOfFirst;
            this.baseOfSecond = baseOfSecond;
            this.sign = sign;
        }
    }

    private SolidBoolean() {}

    public static Mesh union(Mesh a, Mesh b) {
        return combine(a, b, Kind.UNION);
    }

    /** The first body less the second. */
    public static Mesh difference(Mesh a, Mesh b) {
        return combine(a, b, Kind.DIFFERENCE);
    }

    public static Mesh intersection(Mesh a, Mesh b) {
        return combine(a, b, Kind.INTERSECTION);
    }

    private static Mesh combine(Mesh a, Mesh b, Kind kind) {
        if (a.isEmpty() || b.isEmpty()) {
            return apart(a, b, kind);
        }
        BooleanOperand p = new BooleanOperand(a, b);
        BooleanOperand q = new BooleanOperand(b, a);
        Shadows shadows = new Shadows(p, q, kind == Kind.UNION);
        Crossings first = Crossings.ofFirst(p, q, shadows);
        Crossings second = Crossings.ofSecond(p, q, shadows);
        int[] windingOfFirst = Windings.ofFirst(p, q, shadows, first);
        int[] windingOfSecond = Windings.ofSecond(p, q, shadows, second);
        Mesh joined = new BooleanAssembly(p, q, kind, first, second, windingOfFirst, windingOfSecond).build();
        return MeshCleanup.clean(joined);
    }

    private static Mesh apart(Mesh a, Mesh b, Kind kind) {
        return switch (kind) {
            case UNION -> {
                MeshBuilder both =
                        new MeshBuilder(a.vertexCount() + b.vertexCount(), a.triangleCount() + b.triangleCount());
                both.append(a);
                both.append(b);
                yield both.build();
            }
            case DIFFERENCE -> a;
            case INTERSECTION -> Mesh.EMPTY;
        };
    }
}
