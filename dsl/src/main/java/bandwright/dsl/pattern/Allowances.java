// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.pattern;

/**
 * How a pattern differs from the finished piece.
 *
 * @param around linear shrinkage round the ring, a share: 0.016 is 1.6 %; makes the bore of the pattern larger
 * @param across linear shrinkage along the finger, a share
 * @param out linear shrinkage of the thickness, a share
 * @param stockOutsideMm metal left on what is filed and polished outside and at the edges, mm
 * @param stockInsideMm metal left on the inner wall, mm; makes the bore smaller
 */
public record Allowances(double around, double across, double out, double stockOutsideMm, double stockInsideMm) {
    public static final Allowances NONE = new Allowances(0, 0, 0, 0, 0);

    public Allowances {
        if (!(isShare(around) && isShare(across) && isShare(out) && stockOutsideMm >= 0 && stockInsideMm >= 0)) {
            throw new IllegalArgumentException("shrinkage lies between 0 and 1, stock is 0 or more");
        }
    }

    private static boolean isShare(double share) {
        return share >= 0 && share < 1;
    }

    public boolean shrinks() {
        return around != 0 || across != 0 || out != 0;
    }

    /** Whether every length shrinks alike, so that the pattern is the piece in a larger scale. */
    public boolean shrinksEvenly() {
        return around == across && across == out;
    }

    public boolean hasStock() {
        return stockOutsideMm > 0 || stockInsideMm > 0;
    }
}
