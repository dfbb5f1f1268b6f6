// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.material;

/**
 * The side view of a round brilliant, in per cent of its diameter and in degrees. What the four given figures leave open
 * follows from them.
 *
 * <p>Source: Reinitz, Geurts, Gilbertson, Weight ratio within the GIA diamond cut grading system, GIA and Rapaport, for
 * the reference diamond and the two identities.
 *
 * @param tablePercent width of the table
 * @param crownAngleDegrees slope of the crown's main facets against the girdle
 * @param girdlePercent thickness of the girdle
 * @param pavilionAngleDegrees slope of the pavilion's main facets against the girdle
 */
public record BrilliantProportions(
        double tablePercent, double crownAngleDegrees, double girdlePercent, double pavilionAngleDegrees) {
    /** The published reference diamond: crown 14.5 %, pavilion 43 %, total depth 60 %. */
    public static final BrilliantProportions REFERENCE = new BrilliantProportions(57, 34, 2.5, 40.7);

    /**
     * The stone the language takes if nothing else is said: the reference with a girdle of 3 % (the default of the GIA
     * cut grade tables of 2006), 60.5 % deep.
     */
    public static final BrilliantProportions STANDARD = REFERENCE.withGirdlePercent(3);

    public BrilliantProportions {
        if (!(tablePercent > 0
                && tablePercent < 100
                && girdlePercent >= 0
                && crownAngleDegrees > 0
                && crownAngleDegrees < 90
                && pavilionAngleDegrees > 0
                && pavilionAngleDegrees < 90)) {
            throw new IllegalArgumentException("no brilliant has such proportions");
        }
    }

    /** The same stone with another girdle. */
    public BrilliantProportions withGirdlePercent(double percent) {
        return new BrilliantProportions(tablePercent, crownAngleDegrees, percent, pavilionAngleDegrees);
    }

    /** (100 - table) / 2 x tan(crown angle). */
    public double crownHeightPercent() {
        return (100 - tablePercent) / 2 * StrictMath.tan(Math.toRadians(crownAngleDegrees));
    }

    /** 50 x tan(pavilion angle), for a pointed culet. */
    public double pavilionDepthPercent() {
        return 50 * StrictMath.tan(Math.toRadians(pavilionAngleDegrees));
    }

    /** Crown, girdle and pavilion. */
    public double totalDepthPercent() {
        return crownHeightPercent() + girdlePercent + pavilionDepthPercent();
    }
}
