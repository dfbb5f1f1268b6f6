// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.material;

/**
 * A colour as shares of light, red, green and blue, 0 to 1, linear (before the display's gamma), with the primaries of
 * sRGB. For metals: how much of white light falling straight on is thrown back. For stones: how much passes through.
 */
public record LinearColour(double red, double green, double blue) {
    public LinearColour {
        if (!(red >= 0 && red <= 1 && green >= 0 && green <= 1 && blue >= 0 && blue <= 1)) {
            throw new IllegalArgumentException("a colour beyond 0 to 1: " + red + " " + green + " " + blue);
        }
    }
}
