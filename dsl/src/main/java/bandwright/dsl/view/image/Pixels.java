// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.image;

import bandwright.dsl.view.Picture;

/** A picture as rows of pixels from the top left, each 0xRRGGBB as a screen (sRGB) shows it. */
public final class Pixels {
    private final int width;
    private final int height;
    private final int[] colours;

    /** A picture of one colour. */
    public Pixels(int width, int height, int colour) {
        this.width = width;
        this.height = height;
        this.colours = new int[width * height];
        java.util.Arrays.fill(colours, colour);
    }

    public int width() {
        return width;
    }

    public int height() {
        return height;
    }

    public int at(int x, int y) {
        return colours[y * width + x];
    }

    public void set(int x, int y, int colour) {
        colours[y * width + x] = colour;
    }

    /** Lays a colour over a pixel, {@code cover} 0 (nothing) to 1 (all). Mixed as light is, not as the screen codes it. */
    public void cover(int x, int y, int colour, double cover) {
        if (x < 0 || y < 0 || x >= width || y >= height || cover <= 0) {
            return;
        }
        int at = y * width + x;
        int below = colours[at];
        colours[at] = Srgb.code(
                mixed(below >> 16, colour >> 16, cover),
                mixed(below >> 8, colour >> 8, cover),
                mixed(below, colour, cover));
    }

    private static double mixed(int below, int above, double cover) {
        return Srgb.linear(below & 255) * (1 - cover) + Srgb.linear(above & 255) * cover;
    }

    /** Lays another picture over this one, its top left corner there; it must fit. */
    public void put(Pixels other, int left, int top) {
        for (int y = 0; y < other.height; y++) {
            System.arraycopy(other.colours, y * other.width, colours, (top + y) * width + left, other.width);
        }
    }

    /** The picture as a PNG file whose bytes are the same on every machine; a good deal longer than it need be. */
    public byte[] toPlainPng() {
        return PngWriter.writePlain(this);
    }

    /** The picture as a PNG file. */
    public Picture toPicture(String alternativeText) {
        return new Picture(width, height, PngWriter.write(this), alternativeText);
    }
}
