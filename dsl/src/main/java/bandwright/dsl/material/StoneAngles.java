// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.material;

/**
 * How a cut slopes away from its girdle, which is what metal has to follow.
 *
 * <p>Source: for the round brilliant {@link BrilliantProportions#REFERENCE}; an oval is taken as a round one drawn out. For princess and baguette
 * common practice, no source: the first step below the girdle at 60 degrees, above it at 50 and 42 degrees, the pavilion 56 and 45 % of the
 * width.
 *
 * @param pavilionDegrees slope of the facets below the girdle against its plane, across the narrower side
 * @param crownDegrees slope of those above
 * @param pavilionShare depth from girdle to culet as a share of the width
 */
public record StoneAngles(double pavilionDegrees, double crownDegrees, double pavilionShare) {
    private static final StoneAngles BRILLIANT = new StoneAngles(
            BrilliantProportions.REFERENCE.pavilionAngleDegrees(),
            BrilliantProportions.REFERENCE.crownAngleDegrees(),
            BrilliantProportions.REFERENCE.pavilionDepthPercent() / 100);

    private static final StoneAngles PRINCESS = new StoneAngles(60, 50, 0.56);

    private static final StoneAngles BAGUETTE = new StoneAngles(60, 42, 0.45);

    public static StoneAngles of(StoneCut cut) {
        return switch (cut) {
            case ROUND, OVAL -> BRILLIANT;
            case PRINCESS -> PRINCESS;
            case BAGUETTE -> BAGUETTE;
        };
    }

    /** The same with a pavilion that is deeper by so much of the width, and as much steeper. */
    public StoneAngles deeper(double share) {
        double steeper = pavilionSlope() * (pavilionShare + share) / pavilionShare;
        return new StoneAngles(StrictMath.atan(steeper) * (180 / StrictMath.PI), crownDegrees, pavilionShare + share);
    }

    /** How much the stone deepens for each millimetre inwards from its girdle. */
    public double pavilionSlope() {
        return StrictMath.tan(pavilionDegrees * (StrictMath.PI / 180));
    }

    /** How much the stone rises for each millimetre inwards from its girdle. */
    public double crownSlope() {
        return StrictMath.tan(crownDegrees * (StrictMath.PI / 180));
    }
}
