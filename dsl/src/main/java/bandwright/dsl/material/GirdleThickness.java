// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.material;

/** By how much a thick girdle adds to a stone's weight. Source: GemGate, Diamond weight estimation pages. */
public enum GirdleThickness {
    THIN_TO_MEDIUM(1),
    SLIGHTLY_THICK(1.02),
    THICK(1.03),
    VERY_THICK(1.045);

    private final double factor;

    GirdleThickness(double factor) {
        this.factor = factor;
    }

    /** What the weight of a stone with a medium girdle is multiplied by. */
    public double factor() {
        return factor;
    }
}
