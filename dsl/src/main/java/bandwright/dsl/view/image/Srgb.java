// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.image;

import bandwright.dsl.material.LinearColour;

/** Between amounts of light and the codes of a screen (IEC 61966-2-1, sRGB). */
public final class Srgb {
    private static final int STEPS = 8192;
    private static final byte[] CODES = codes();
    private static final double[] LINEAR = linears();

    private Srgb() {}

    /** The colour of three shares of light, each held to 0 to 1, as 0xRRGGBB. */
    public static int code(double red, double green, double blue) {
        return code(red) << 16 | code(green) << 8 | code(blue);
    }

    public static int code(LinearColour colour) {
        return code(colour.red(), colour.green(), colour.blue());
    }

    /** The share of light, 0 to 1, that a code 0 to 255 stands for. */
    public static double linear(int code) {
        return LINEAR[code];
    }

    private static int code(double light) {
        int step = (int) (Math.max(0, Math.min(1, light)) * (STEPS - 1) + 0.5);
        return CODES[step] & 255;
    }

    private static byte[] codes() {
        byte[] codes = new byte[STEPS];
        for (int i = 0; i < STEPS; i++) {
            double light = i / (double) (STEPS - 1);
            double coded = light <= 0.0031308 ? 12.92 * light : 1.055 * StrictMath.pow(light, 1 / 2.4) - 0.055;
            codes[i] = (byte) (int) (255 * coded + 0.5);
        }
        return codes;
    }

    private static double[] linears() {
        double[] linears = new double[256];
        for (int i = 0; i < 256; i++) {
            double coded = i / 255.0;
            linears[i] = coded <= 0.04045 ? coded / 12.92 : StrictMath.pow((coded + 0.055) / 1.055, 2.4);
        }
        return linears;
    }
}
