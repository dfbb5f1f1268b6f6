// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.material;

/**
 * The weight of a stone from its sizes, in metric carats (0.2 g), by the trade's estimation formulas.
 *
 * <p>The coefficients are for diamond; other materials scale by density against {@value #DIAMOND_DENSITY} g/cm3, the
 * density those coefficients were made for. Sources:
 *
 * <ul>
 *   <li>round 0.0061 x d^2 x depth: GemGate, Diamond weight estimation pages; Esslinger, Stone weight estimation formula,
 *       2014;
 *   <li>oval 0.0062 x (mean of length and width)^2 x depth: Esslinger, 2014; GIA formulas for mounted stones, as quoted in
 *       a trade forum, 2006;
 *   <li>princess 0.0083 x length x width x depth if square (from memory), rising to 0.0090 at 1.5, 0.0100 at 2 and 0.0105
 *       at 2.5 times as long as wide: Jewelry Notes, Estimate carat weight of princess-cut diamonds. Its 0.0080 at 1.25 is
 *       left out: it would make a longer stone lighter than the square one;
 *   <li>baguette 0.00915 x length x width x depth: from memory, the usual appraisal factor.
 * </ul>
 *
 * <p>Small round diamonds are sold as heavier than this, by 10 to 25 % below 3 mm: see {@link MeleeTable}.
 */
public final class StoneWeight {
    /** Specific gravity of diamond: Gemopedia identification table; Colored stone weight estimation table. */
    static final double DIAMOND_DENSITY = 3.52;

    private static final double[] PRINCESS_RATIOS = {1, 1.5, 2, 2.5};
    private static final double[] PRINCESS_COEFFICIENTS = {0.0083, 0.0090, 0.0100, 0.0105};

    private StoneWeight() {}

    /** Carats of a stone of the cut's usual depth ({@link StoneCut#depthShare()}) and a girdle of up to medium. */
    public static double carats(StoneCut cut, StoneMaterial material, StoneSize size) {
        return carats(cut, material, size, cut.depthShare() * size.widthMm(), GirdleThickness.THIN_TO_MEDIUM);
    }

    /** Carats of a stone whose total depth, in mm, was measured. */
    public static double carats(
            StoneCut cut, StoneMaterial material, StoneSize size, double depthMm, GirdleThickness girdle) {
        return diamondCarats(cut, size, depthMm) * girdle.factor() * material.densityGPerCm3() / DIAMOND_DENSITY;
    }

    /** The formula of a cut in words and numbers, for diamond in mm, and where it is from. */
    public static String formula(StoneCut cut) {
        return switch (cut) {
            case ROUND ->
                "0.0061 x diameter^2 x depth (GemGate, Diamond weight estimation pages; Esslinger, Stone weight estimation formula, 2014)";
            case OVAL -> "0.0062 x (mean of length and width)^2 x depth (Esslinger, 2014)";
            case BAGUETTE -> "0.00915 x length x width x depth (from memory, the usual appraisal factor)";
            case PRINCESS ->
                "0.0083 x length x width x depth if square, up to 0.0105 if longer (Jewelry Notes; the first figure from memory)";
        };
    }

    /** Carats of a body whose volume in mm3 is known: exact, a carat being 0.2 g. */
    public static double caratsOfVolume(StoneMaterial material, double volumeMm3) {
        return volumeMm3 * material.densityGPerCm3() / 200;
    }

    private static double diamondCarats(StoneCut cut, StoneSize size, double depthMm) {
        double mean = size.meanMm();
        double area = size.lengthMm() * size.widthMm();
        return switch (cut) {
            case ROUND -> 0.0061 * mean * mean * depthMm;
            case OVAL -> 0.0062 * mean * mean * depthMm;
            case BAGUETTE -> 0.00915 * area * depthMm;
            case PRINCESS -> princess(size.lengthToWidth()) * area * depthMm;
        };
    }

    /** Straight between the published ratios, level beyond the last. */
    private static double princess(double lengthToWidth) {
        for (int i = 1; i < PRINCESS_RATIOS.length; i++) {
            if (lengthToWidth <= PRINCESS_RATIOS[i]) {
                double share = (lengthToWidth - PRINCESS_RATIOS[i - 1]) / (PRINCESS_RATIOS[i] - PRINCESS_RATIOS[i - 1]);
                return PRINCESS_COEFFICIENTS[i - 1] + share * (PRINCESS_COEFFICIENTS[i] - PRINCESS_COEFFICIENTS[i - 1]);
            }
        }
        return PRINCESS_COEFFICIENTS[PRINCESS_COEFFICIENTS.length - 1];
    }
}
