// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.render;

/**
 * From the light of the scene to that of the screen, without burnt-out whites: the rational fit to the film curve of the
 * Academy Color Encoding System by K. Narkowicz, ACES filmic tone mapping curve, 2015.
 */
final class ToneCurve {
    private static final double EXPOSURE = 0.85;

    /** How much each channel is bent by itself, which pales what is bright, against all by the brightest, which keeps hues. */
    private static final double PALING = 0.08;

    private ToneCurve() {}

    /** What one channel becomes, 0 to 1, where the brightest of the three is {@code brightest}. */
    static double apply(double light, double brightest) {
        double byHue = brightest > 0 ? light * curve(brightest) / brightest : 0;
        return byHue + PALING * (curve(light) - byHue);
    }

    private static double curve(double light) {
        double x = EXPOSURE * Math.max(0, light);
        return Math.min(1, x * (2.51 * x + 0.03) / (x * (2.43 * x + 0.59) + 0.14));
    }
}
