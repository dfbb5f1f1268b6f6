// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

/**
 * What two girdles leave of the pin that stands between them, as the setter sees it along the pin: a circle less two segments, for across a pin a girdle's edge is as
 * good as straight. Where the notches lie side by side each takes its own; where they lie opposite each other both are taken from one width.
 *
 * @param radius of the pin, mm
 * @param first how deep the one girdle reaches into it, mm, no more than through
 * @param second the other
 * @param between the angle between the ways from the pin's axis to the two stones, radians
 */
record PinNotch(double radius, double first, double second, double between) {
    PinNotch {
        first = Math.max(0, Math.min(2 * radius, first));
        second = Math.max(0, Math.min(2 * radius, second));
    }

    /** The share of the pin's width that is taken where least is left; a circle's least width lies square to one of its segments. */
    double share() {
        double left = Math.min(left(first, second), left(second, first));
        return 1 - Math.max(0, left) / (2 * radius);
    }

    /** The width of what is left, square to one notch. */
    private double left(double notch, double other) {
        double fromOther = StrictMath.PI - between;
        double arm = StrictMath.acos((radius - other) / radius);
        // The far side of the pin is there, unless the other notch has taken it.
        double far = fromOther >= arm ? radius : radius * StrictMath.cos(arm - fromOther);
        return radius - notch + far;
    }
}
