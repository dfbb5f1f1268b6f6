// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.render;

import org.joml.Vector3d;

/**
 * A camera fitted to a scene: turns places in the picture into rays. The middle of the scene's box is sharp and its plane
 * is where the scale holds.
 */
final class Viewpoint {
    /** Share of the picture that the scene may fill, each way. */
    private static final double FILL_WIDTH = 0.84;

    private static final double FILL_HEIGHT = 0.78;

    private final Vector3d forward;
    private final Vector3d right;
    private final Vector3d up;
    private final Vector3d middle;
    private final double away;
    private final boolean parallel;
    private final double shiftX;
    private final double shiftY;
    private final double pixelsPerMm;
    private final double halfWidth;
    private final double halfHeight;

    Viewpoint(Camera camera, TriangleSoup soup, int width, int height) {
        double azimuth = Math.toRadians(camera.azimuthDegrees());
        double elevation = Math.toRadians(camera.elevationDegrees());
        // The standing ring: x is up, z to the front, and -y to the right of somebody who looks at its front.
        double level = StrictMath.cos(elevation);
        forward = new Vector3d(
                -StrictMath.sin(elevation), level * StrictMath.sin(azimuth), -level * StrictMath.cos(azimuth));
        right = new Vector3d(0, -StrictMath.cos(azimuth), -StrictMath.sin(azimuth));
        up = right.cross(forward, new Vector3d());
        middle = soup.middle();
        double radius = Math.max(1e-3, soup.radius());
        parallel = camera.distance() == 0;
        away = radius * (parallel ? 10 : camera.distance());

        double left = Double.POSITIVE_INFINITY;
        double rightmost = Double.NEGATIVE_INFINITY;
        double bottom = Double.POSITIVE_INFINITY;
        double top = Double.NEGATIVE_INFINITY;
        for (int at = 0; at < soup.corners.length; at += 3) {
            double px = soup.corners[at] - middle.x;
            double py = soup.corners[at + 1] - middle.y;
            double pz = soup.corners[at + 2] - middle.z;
            double scale = parallel ? 1 : away / (away + px * forward.x + py * forward.y + pz * forward.z);
            double x = scale * (px * right.x + py * right.y + pz * right.z);
            double y = scale * (px * up.x + py * up.y + pz * up.z);
            left = Math.min(left, x);
            rightmost = Math.max(rightmost, x);
            bottom = Math.min(bottom, y);
            top = Math.max(top, y);
        }
        shiftX = (left + rightmost) / 2;
        shiftY = (bottom + top) / 2;
        pixelsPerMm = Math.min(
                FILL_WIDTH * width / Math.max(1e-3, rightmost - left),
                FILL_HEIGHT * height / Math.max(1e-3, top - bottom));
        halfWidth = width / 2.0;
        halfHeight = height / 2.0;
    }

    double pixelsPerMm() {
        return pixelsPerMm;
    }

    Vector3d forward() {
        return forward;
    }

    Vector3d right() {
        return right;
    }

    /**
     * Where a place is in the picture: in pixels to the right and down from the top left, and its nearness, which grows evenly
     * along any straight line in the picture.
     *
     * @param from holds x, y and z in mm, from {@code at} on
     * @param to is given the three numbers, from {@code at} on
     */
    void project(float[] from, int at, float[] to) {
        double x = from[at] - middle.x;
        double y = from[at + 1] - middle.y;
        double z = from[at + 2] - middle.z;
        double ahead = x * forward.x + y * forward.y + z * forward.z;
        double scale = parallel ? 1 : away / (away + ahead);
        double across = scale * (x * right.x + y * right.y + z * right.z);
        double above = scale * (x * up.x + y * up.y + z * up.z);
        to[at] = (float) (halfWidth + (across - shiftX) * pixelsPerMm);
        to[at + 1] = (float) (halfHeight - (above - shiftY) * pixelsPerMm);
        to[at + 2] = (float) (parallel ? -ahead / away : scale - 1);
    }

    /** The ray through a place in the picture, in pixels from the top left. */
    void aim(Ray ray, double pixelX, double pixelY) {
        double x = (pixelX - halfWidth) / pixelsPerMm + shiftX;
        double y = (halfHeight - pixelY) / pixelsPerMm + shiftY;
        double acrossX = right.x * x + up.x * y;
        double acrossY = right.y * x + up.y * y;
        double acrossZ = right.z * x + up.z * y;
        double backX = middle.x - away * forward.x;
        double backY = middle.y - away * forward.y;
        double backZ = middle.z - away * forward.z;
        if (parallel) {
            ray.start(backX + acrossX, backY + acrossY, backZ + acrossZ, forward.x, forward.y, forward.z);
            return;
        }
        double dx = away * forward.x + acrossX;
        double dy = away * forward.y + acrossY;
        double dz = away * forward.z + acrossZ;
        double length = Math.sqrt(dx * dx + dy * dy + dz * dz);
        ray.start(backX, backY, backZ, dx / length, dy / length, dz / length);
    }
}
