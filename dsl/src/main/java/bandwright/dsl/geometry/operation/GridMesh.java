// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.operation;

import bandwright.dsl.geometry.solid.Mesh;
import bandwright.dsl.geometry.solid.MeshBuilder;
import bandwright.dsl.geometry.solid.MeshMeasures;
import bandwright.dsl.geometry.solid.MeshShells;

/**
 * A closed mesh made fit for files, whose numbers have few digits: every coordinate a whole multiple of {@link #GRID_MM}, and yet no
 * triangle without area.
 *
 * <ol>
 *   <li>Triangles that the grid could flatten are taken out first: see {@link MeshCleanup}, with limits a few steps of the grid wide.
 *   <li>Vertices move to the grid, by less than a step.
 *   <li>What is still flat after that is tried again with wider limits.
 * </ol>
 *
 * Up to 128 mm from the origin, where single precision has steps of less than {@value #GRID_MM} mm, two places on the grid are two
 * places in single precision as well.
 */
public final class GridMesh {
    /** Ten nanometres: nothing of a ring is made so finely. */
    public static final double GRID_MM = 1e-5;

    private static final double STEPS_PER_MM = 1e5;
    private static final double SHORT_MM = 5 * GRID_MM;
    private static final double LOW_MM = 2 * GRID_MM;
    private static final int TRIES = 4;

    private GridMesh() {}

    /**
     * The mesh on the grid; each of its shells stays one.
     *
     * @throws IllegalStateException if it does not stay closed, which is a fault of ours
     */
    public static Mesh of(Mesh mesh) {
        MeshBuilder all = new MeshBuilder(mesh.vertexCount(), mesh.triangleCount());
        MeshShells.of(mesh).forEach(shell -> all.append(shell(shell)));
        return all.build();
    }

    /** The nearest place on the grid, mm; never a negative zero. */
    public static double onGrid(double mm) {
        return Math.rint(mm * STEPS_PER_MM) / STEPS_PER_MM + 0.0;
    }

    private static Mesh shell(Mesh mesh) {
        String fault = "";
        double limit = 1;
        for (int tried = 0; tried < TRIES; tried++) {
            Mesh moved = onGrid(MeshCleanup.clean(mesh, limit * SHORT_MM, limit * LOW_MM));
            fault = MeshMeasures.closednessFault(moved);
            if (fault.isEmpty()) {
                return moved;
            }
            limit *= 3;
        }
        throw new IllegalStateException("A mesh cannot be written with few digits: " + fault);
    }

    private static Mesh onGrid(Mesh mesh) {
        double[] positions = mesh.positions().clone();
        for (int i = 0; i < positions.length; i++) {
            positions[i] = onGrid(positions[i]);
        }
        return new Mesh(positions, mesh.triangles(), mesh.surfaces());
    }
}
