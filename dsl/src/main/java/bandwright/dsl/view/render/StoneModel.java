// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.render;

import org.joml.Vector3d;

import bandwright.dsl.geometry.solid.Mesh;
import bandwright.dsl.geometry.solid.MeshBuilder;
import bandwright.dsl.material.BrilliantProportions;
import bandwright.dsl.material.StoneCut;

/** Stones as bodies. A stone's own z is its axis, towards the table; 0 is the girdle's lower edge. */
public final class StoneModel {
    private StoneModel() {}

    /**
     * A stone of any cut in its usual proportions.
     *
     * @param sizeXMm along its own x, which {@link #standing} lays across the band
     * @param sizeYMm along its own y, which goes around the ring; of a round stone the same
     */
    public static Mesh of(StoneCut cut, double sizeXMm, double sizeYMm) {
        return switch (cut) {
            case ROUND -> roundBrilliant(sizeXMm);
            case OVAL -> oval(sizeXMm, sizeYMm);
            case PRINCESS -> StepCutBuilder.princess(sizeXMm, sizeYMm);
            case BAGUETTE -> StepCutBuilder.baguette(sizeXMm, sizeYMm);
        };
    }

    /** A round brilliant of its width, drawn out to its length. */
    private static Mesh oval(double sizeXMm, double sizeYMm) {
        double width = Math.min(sizeXMm, sizeYMm);
        Mesh round = roundBrilliant(width);
        double[] positions = round.positions().clone();
        for (int at = 0; at < positions.length; at += 3) {
            positions[at] *= sizeXMm / width;
            positions[at + 1] *= sizeYMm / width;
        }
        return new Mesh(positions, round.triangles(), round.surfaces());
    }

    /** A round brilliant of the language's usual proportions, with 57 facets and the girdle. */
    public static Mesh roundBrilliant(double diameterMm) {
        return roundBrilliant(diameterMm, BrilliantProportions.STANDARD);
    }

    public static Mesh roundBrilliant(double diameterMm, BrilliantProportions proportions) {
        return new BrilliantBuilder(diameterMm, proportions).build();
    }

    /**
     * A stone standing on a ring: its axis points away from the finger's axis, its own x to the fingertip.
     *
     * @param angleDegrees the place around, 0 at the top
     * @param radiusMm from the finger's axis to the girdle's lower edge
     * @param acrossMm along the finger, positive to the fingertip
     */
    public static Mesh standing(Mesh stone, double angleDegrees, double radiusMm, double acrossMm) {
        double angle = Math.toRadians(angleDegrees);
        double cosine = StrictMath.cos(angle);
        double sine = StrictMath.sin(angle);
        return placed(
                stone,
                new Vector3d(radiusMm * cosine, radiusMm * sine, acrossMm),
                new Vector3d(0, 0, 1),
                new Vector3d(cosine, sine, 0));
    }

    /**
     * A stone put anywhere.
     *
     * @param girdle where the middle of its girdle goes, mm
     * @param sideways where its own x points, of length one
     * @param axis where its table looks, of length one and square to {@code sideways}
     */
    public static Mesh placed(Mesh stone, Vector3d girdle, Vector3d sideways, Vector3d axis) {
        Vector3d third = axis.cross(sideways, new Vector3d());
        MeshBuilder placed = new MeshBuilder(stone.vertexCount(), stone.triangleCount());
        for (int v = 0; v < stone.vertexCount(); v++) {
            double x = stone.x(v);
            double y = stone.y(v);
            double z = stone.z(v);
            placed.vertex(
                    girdle.x + x * sideways.x + y * third.x + z * axis.x,
                    girdle.y + x * sideways.y + y * third.y + z * axis.y,
                    girdle.z + x * sideways.z + y * third.z + z * axis.z);
        }
        int[] corners = stone.triangles();
        for (int t = 0; t < stone.triangleCount(); t++) {
            placed.triangle(corners[3 * t], corners[3 * t + 1], corners[3 * t + 2], stone.surfaces()[t]);
        }
        return placed.build();
    }
}
