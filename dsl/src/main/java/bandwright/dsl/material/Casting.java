// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.material;

/** Weights on the way from the pattern to the cast piece, and from one metal to another. */
public final class Casting {
    private Casting() {}

    /**
     * Grams of metal to melt for a pattern: pattern mass x metal density / pattern density, and the button on top. Source:
     * Romanoff International, Wax weight vs metal weight (Casting 101); Ganoksin Orchid, thread 27807. The trade takes wax
     * as 1 g/cm3; casting resin is 1.05 to 1.15 g/cm3.
     *
     * @param patternGrams mass of pattern and sprues
     * @param patternDensity g/cm3 of the wax or resin
     * @param metalDensity g/cm3 of the metal
     * @param button what goes into the button, as a share of the metal: 0.1 is 10 %
     */
    public static double metalForPattern(
            double patternGrams, double patternDensity, double metalDensity, double button) {
        return patternGrams * metalDensity / patternDensity * (1 + button);
    }

    /**
     * What a piece would weigh in another metal: in proportion to the densities. Source: AU Enterprises, Weights - relative
     * weights; Stuller, Where can I find the specific gravity of various materials?, 2012.
     *
     * @param weight in any unit of mass; the result has the same
     */
    public static double inAnotherMetal(double weight, double densityNow, double densityThen) {
        return weight * densityThen / densityNow;
    }

    /**
     * The share of the mass that is lost when every length shrinks by a share: 1 - (1 - s)^3, about three times as much.
     * Source: Artistry of Gold, Mold shrinkage.
     *
     * @param shrinkage 0.016 is 1.6 %
     */
    public static double massLostByShrinking(double shrinkage) {
        double left = 1 - shrinkage;
        return 1 - left * left * left;
    }
}
