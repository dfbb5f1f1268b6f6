// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.render;

/**
 * From where the ring is looked at; the picture is always fitted to the whole scene.
 *
 * @param azimuthDegrees how far the camera has gone round the standing ring from the fingertip's side, to its right
 * @param elevationDegrees how high it stands, -90 to 90; 90 looks straight down on the crown
 * @param distance how far it is from the middle, in radii of the scene; 0 for parallel rays, as a drawing has them
 */
public record Camera(double azimuthDegrees, double elevationDegrees, double distance) {
    /** The customer's view: from the front, a little to the side and above. */
    public static final Camera THREE_QUARTER = new Camera(48, 24, 9);

    /** Straight down on the crown (the place at 0 degrees), the fingertip up, as on one's own hand. */
    public static final Camera TOP = new Camera(180, 90, 0);

    /** Through the finger's hole from the fingertip's side, the top of the ring up: the circle is seen. */
    public static final Camera FRONT = new Camera(0, 0, 0);

    /** Across the finger: the breadth is seen, the top of the ring up, the fingertip to the left. */
    public static final Camera SIDE = new Camera(90, 0, 0);

    public Camera {
        if (!(elevationDegrees >= -90 && elevationDegrees <= 90 && (distance == 0 || distance >= 2))) {
            throw new IllegalArgumentException(
                    "A camera stands between -90 and 90 degrees, 0 or at least 2 radii away");
        }
    }

    /** The customer's view from any side. */
    public static Camera from(double azimuthDegrees, double elevationDegrees) {
        return new Camera(azimuthDegrees, elevationDegrees, THREE_QUARTER.distance);
    }
}
