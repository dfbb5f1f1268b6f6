// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.model;

import bandwright.dsl.quantity.FingerSize;

/**
 * Whose finger a band fits.
 *
 * @param size the size asked for
 * @param bore the size that is made: the size with its allowance
 */
public record Finger(FingerSize size, FingerSize bore) {
    /** Radius of the bore in mm. */
    public double innerRadiusMm() {
        return bore.diameterMm() / 2;
    }
}
