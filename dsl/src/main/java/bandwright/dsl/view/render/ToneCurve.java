// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.render;

/**
 * From the light of the scene to that of the screen, without burnt-out whites: the rational fit to the film curve of the
 * Academy Color Encoding System by K. Narkowicz, ACES filmic tone mapping curve, 2015.
 */
final class ToneCurve {
    private static final double EXPOSURE = 0.8;

    private ToneCurve() {}

    /** Share of the screen's white, 0 to 1, for any amount of light. */
    static double apply(double light) {
        double x = EXPOSURE * Math.max(0, light);
        return Math.min(1, x * (2.51 * x + 0.03) / (x * (2.43 * x + 0.59) + 0.14));
    }
}
