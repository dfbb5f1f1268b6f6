// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.render;

import java.util.List;

import org.joml.Vector3d;

/**
 * The room round the ring: light by direction. It turns with the camera, so the lights stand where the photographer put
 * them: a broad one overhead, a tall one at the left, a narrow one at the right, one behind, a faint one in front, and darkness between,
 * without which curved metal shows no form.
 */
final class Studio {
    private static final List<SoftBox> LIGHTS = List.of(
            SoftBox.at(1, -0.1, 0.3, 0.8, 0.45, 1.7),
            SoftBox.at(0.3, -0.85, 0.5, 0.32, 0.8, 2.1),
            SoftBox.at(0.3, 0.95, 0.25, 0.16, 0.8, 1.8),
            SoftBox.at(0.45, 0.15, -0.9, 0.8, 0.25, 1.4),
            SoftBox.at(0.55, 0.35, 0.75, 0.5, 0.2, 1.0));

    /** Small lamps that only stones show: on metal they would be specks. */
    private static final List<SoftBox> SPARKS = List.of(
            SoftBox.at(0.75, -0.5, 0.45, 0.1, 0.1, 9),
            SoftBox.at(0.8, 0.45, 0.25, 0.09, 0.09, 9),
            SoftBox.at(0.55, 0.25, 0.8, 0.07, 0.07, 9),
            SoftBox.at(0.65, -0.1, -0.75, 0.1, 0.1, 8),
            SoftBox.at(0.35, -0.55, -0.7, 0.1, 0.1, 8),
            SoftBox.at(0.4, 0.8, -0.4, 0.1, 0.1, 8));

    private static final double STONE_SOFT = 0.03;

    /** How far the walls are, in radii of the scene; near enough that a flat face shows a gradient. */
    private static final double FAR = 3.5;

    private final Vector3d right;
    private final Vector3d front;
    private final Vector3d camera;
    private final Vector3d middle;
    private final double scale;

    Studio(Viewpoint viewpoint, TriangleSoup soup) {
        right = viewpoint.right();
        front = right.cross(new Vector3d(1, 0, 0), new Vector3d());
        camera = viewpoint.forward().negate(new Vector3d());
        middle = soup.middle();
        scale = 1 / (FAR * Math.max(1e-3, soup.radius()));
    }

    /** The light that comes to the start of a ray from where it goes; its edges are blurred by the metal's roughness. */
    double onMetal(Ray ray, double roughness) {
        return onMetal(
                ray.directionX + scale * (ray.originX - middle.x),
                ray.directionY + scale * (ray.originY - middle.y),
                ray.directionZ + scale * (ray.originZ - middle.z),
                roughness);
    }

    /** The light from a direction, which need not have length one. */
    double onMetal(double x, double y, double z, double roughness) {
        double length = 1 / Math.sqrt(x * x + y * y + z * z);
        double u = x * length;
        double r = (y * right.y + z * right.z) * length;
        double f = (y * front.y + z * front.z) * length;
        double soft = 0.08 + roughness;
        return room(u, r, f, soft) + sum(LIGHTS, u, r, f, soft);
    }

    /** The light from a direction on a stone, which sees the lamps, and the camera as a dark spot before them. */
    double onStone(double x, double y, double z) {
        double r = y * right.y + z * right.z;
        double f = y * front.y + z * front.z;
        double light = room(x, r, f, STONE_SOFT) + sum(LIGHTS, x, r, f, STONE_SOFT) + sum(SPARKS, x, r, f, STONE_SOFT);
        double towards = x * camera.x + y * camera.y + z * camera.z;
        return light * (1 - 0.85 * ramp((towards - 0.9) * 16));
    }

    /** Walls, darker at the height of the ring than above; in front a wash of light from the upper left; and the
     * light floor. */
    private static double room(double up, double right, double front, double soft) {
        double wall = 0.1 + 0.3 * Math.max(0, up) + Math.max(0, front) * Math.max(0, 0.32 + 0.9 * up - 0.5 * right);
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
