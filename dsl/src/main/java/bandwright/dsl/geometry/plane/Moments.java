// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.plane;

/**
 * Area in mm² and first moments in mm³ of a plane figure.
 *
 * @param aboutX ∬ y dA
 * @param aboutY ∬ x dA
 */
public record Moments(double area, double aboutX, double aboutY) {
    public static final Moments NONE = new Moments(0, 0, 0);

    public Moments plus(Moments other) {
        return new Moments(area + other.area, aboutX + other.aboutX, aboutY + other.aboutY);
    }

    public Point centroid() {
        return new Point(aboutY / area, aboutX / area);
    }

    /**
     * Volume in mm³ swept when the figure turns once about the x axis: area times the way of its centroid (Pappus of
     * Alexandria, Collection, book VII; Guldin 1641).
     */
    public double volumeAboutX() {
        return 2 * StrictMath.PI * aboutX;
    }
}
