// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.model;

/**
 * How much of the round something takes.
 *
 * @param degrees the amount, above 0 and at most 360
 * @param centredDegrees the place of its middle, counter-clockwise from the top as seen from the fingertip
 */
public record Arc(double degrees, double centredDegrees) {
    public static final Arc FULL = new Arc(360, 0);

    public boolean isFull() {
        return degrees >= 360;
    }
}
