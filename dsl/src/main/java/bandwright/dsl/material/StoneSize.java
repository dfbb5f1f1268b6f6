// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.material;

/**
 * The sizes of a stone at its girdle, in millimetres, both above 0. Which way it is set does not matter here: the longer
 * one is the length.
 */
public record StoneSize(double lengthMm, double widthMm) {
    public StoneSize {
        if (!(lengthMm > 0 && widthMm > 0)) {
            throw new IllegalArgumentException("a stone of " + lengthMm + " mm by " + widthMm + " mm");
        }
        double longer = Math.max(lengthMm, widthMm);
        widthMm = Math.min(lengthMm, widthMm);
        lengthMm = longer;
    }

    /** A round or square stone. */
    public static StoneSize of(double sizeMm) {
        return new StoneSize(sizeMm, sizeMm);
    }

    /** Mean of the two; of a slightly uneven round stone the diameter its weight is estimated with. */
    public double meanMm() {
        return (lengthMm + widthMm) / 2;
    }

    /** Length over width, 1 or more. */
    public double lengthToWidth() {
        return lengthMm / widthMm;
    }
}
