// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.render;

import org.joml.Vector3d;

/**
 * A rectangular light or card far away, seen from the ring.
 *
 * @param towards the direction of its middle: up, right and front
 * @param halfWidth half its level side, as a tangent
 * @param halfHeight half its other side, as a tangent
 * @param light what it adds to the studio's light; negative for a dark card
 */
record SoftBox(Vector3d towards, Vector3d level, Vector3d steep, double halfWidth, double halfHeight, double light) {
    static SoftBox at(double up, double right, double front, double halfWidth, double halfHeight, double light) {
        Vector3d towards = new Vector3d(up, right, front).normalize();
        // The level side lies along up × towards; straight overhead, along the right.
        Vector3d level = new Vector3d(1, 0, 0).cross(towards);
        level = level.length() < 1e-6 ? new Vector3d(0, 1, 0) : level.normalize();
        return new SoftBox(towards, level, towards.cross(level, new Vector3d()), halfWidth, halfHeight, light);
    }

    /** What a direction sees of it; {@code soft} is half the width of its blurred edge, as a tangent. */
    double seen(double up, double right, double front, double soft) {
        double along = up * towards.x + right * towards.y + front * towards.z;
        if (along <= 0.05) {
            return 0;
        }
        double x = Math.abs(up * level.x + right * level.y + front * level.z) / along;
        if (x >= halfWidth + soft) {
            return 0;
        }
        double y = Math.abs(up * steep.x + right * steep.y + front * steep.z) / along;
        if (y >= halfHeight + soft) {
            return 0;
        }
        return light
                * Studio.ramp((halfWidth + soft - x) / (2 * soft))
                * Studio.ramp((halfHeight + soft - y) / (2 * soft));
    }
}
