// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.render;

import java.util.List;

import org.joml.Vector3d;

/**
 * The room round the ring: light by direction. It turns with the camera, so the lights stand where the photographer put
 * them: a broad one overhead, a tall one at the left, a narrow one at the right, one behind, and dark cards between, without which
 * curved metal shows no form.
 */
final class Studio {
    private static final List<SoftBox> LIGHTS = List.of(
            SoftBox.at(1, -0.1, 0.35, 0.75, 0.5, 1.9),
            SoftBox.at(0.35, -0.85, 0.5, 0.3, 0.75, 2.3),
            SoftBox.at(0.3, 0.95, 0.25, 0.16, 0.8, 1.7),
            SoftBox.at(0.45, 0.15, -0.9, 0.8, 0.22, 1.3),
            SoftBox.at(0.28, 0.42, 0.85, 0.1, 0.3, 0.8),
            SoftBox.at(0.6, 0.55, 0.6, 0.14, 0.5, -0.2),
            SoftBox.at(0.45, -0.25, 0.85, 0.16, 0.6, -0.2));

    /** Small lamps that only stones show: on metal they would be specks. */
    private static final List<SoftBox> SPARKS = List.of(
            SoftBox.at(0.75, -0.5, 0.45, 0.1, 0.1, 9),
            SoftBox.at(0.8, 0.45, 0.25, 0.09, 0.09, 9),
            SoftBox.at(0.55, 0.25, 0.8, 0.07, 0.07, 9),
            SoftBox.at(0.65, -0.1, -0.75, 0.1, 0.1, 8),
            SoftBox.at(0.35, -0.55, -0.7, 0.1, 0.1, 8),
            SoftBox.at(0.4, 0.8, -0.4, 0.1, 0.1, 8));

    private static final double STONE_SOFT = 0.03;

    private final Vector3d right;
    private final Vector3d front;

    Studio(Vector3d right) {
        this.right = right;
        front = right.cross(new Vector3d(1, 0, 0), new Vector3d());
    }

    /** The light from a direction on metal, its edges blurred by the metal's roughness. */
    double onMetal(double x, double y, double z, double roughness) {
        double r = y * right.y + z * right.z;
        double f = y * front.y + z * front.z;
        double soft = 0.06 + roughness;
        return room(x, soft) + sum(LIGHTS, x, r, f, soft);
    }

    /** The light from a direction on a stone. */
    double onStone(double x, double y, double z) {
        double r = y * right.y + z * right.z;
        double f = y * front.y + z * front.z;
        return room(x, STONE_SOFT) + sum(LIGHTS, x, r, f, STONE_SOFT) + sum(SPARKS, x, r, f, STONE_SOFT);
    }

    /** Walls, darker at the height of the ring than above, and the light floor. */
    private static double room(double up, double soft) {
        double wall = 0.16 + 0.3 * Math.max(0, up);
        double floor = 0.5 + 0.12 * up;
        return floor + (wall - floor) * ramp(0.5 + up / (2 * soft));
    }

    private static double sum(List<SoftBox> boxes, double up, double right, double front, double soft) {
        double sum = 0;
        for (int i = 0; i < boxes.size(); i++) {
            sum += boxes.get(i).seen(up, right, front, soft);
        }
        return sum;
    }

    /** From 0 to 1 without a corner, beyond that level. */
    static double ramp(double share) {
        double held = Math.max(0, Math.min(1, share));
        return held * held * (3 - 2 * held);
    }
}
