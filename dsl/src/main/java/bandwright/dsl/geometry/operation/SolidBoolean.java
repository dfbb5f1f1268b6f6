// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.operation;

import java.util.concurrent.Callable;
import java.util.concurrent.ForkJoinTask;

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
 * Cost: n log n in the number of triangles, plus what meets; large bodies use two cores for the first two steps.
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

    /** Triangles from which the second body is worked at beside the first. */
    private static final int LARGE = 20_000;

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
        boolean large = a.triangleCount() + b.triangleCount() > LARGE;
        ForkJoinTask<BooleanOperand> making = start(large, () -> new BooleanOperand(b, a));
        BooleanOperand p = new BooleanOperand(a, b);
        BooleanOperand q = making.join();
        ForkJoinTask<Meeting> meeting = start(large, () -> Meeting.ofSecond(p, q, kind));
        Meeting first = Meeting.ofFirst(p, q, kind);
        Meeting second = meeting.join();
        return MeshCleanup.clean(new BooleanAssembly(p, q, kind, first, second).build());
    }

    /** Work for another core, if it is worth the trouble; both ways give the same. */
    private static <T> ForkJoinTask<T> start(boolean elsewhere, Callable<T> work) {
        ForkJoinTask<T> task = ForkJoinTask.adapt(work);
        if (elsewhere) {
            return task.fork();
        }
        task.invoke();
        return task;
    }

    /** How one body meets the other: where its edges pass through the other's faces, and how often each vertex lies inside. */
    @SuppressWarnings("ArrayRecordComponent")
    record Meeting(Crossings crossings, int[] windings) {
        static Meeting ofFirst(BooleanOperand p, BooleanOperand q, Kind kind) {
            Shadows shadows = new Shadows(p, q, kind == Kind.UNION);
            Crossings crossings = Crossings.ofFirst(p, q, shadows);
            return new Meeting(crossings, Windings.ofFirst(p, q, shadows, crossings));
        }

        static Meeting ofSecond(BooleanOperand p, BooleanOperand q, Kind kind) {
            Shadows shadows = new Shadows(p, q, kind == Kind.UNION);
            Crossings crossings = Crossings.ofSecond(p, q, shadows);
            return new Meeting(crossings, Windings.ofSecond(p, q, shadows, crossings));
        }
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
