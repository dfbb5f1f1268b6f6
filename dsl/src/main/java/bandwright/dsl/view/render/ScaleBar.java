// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.render;

import bandwright.dsl.view.image.Canvas;
import bandwright.dsl.view.image.Pixels;
import bandwright.dsl.view.image.StrokeText;

/** The bar in the lower left corner that says how long 5 mm are (or 1 mm, or 20 mm, as fits the picture). */
final class ScaleBar {
    private static final int INK = 0x3c3a37;

    private ScaleBar() {}

    static void draw(Pixels pixels, double pixelsPerMm) {
        int length = 5;
        if (length * pixelsPerMm > pixels.width() / 3.0) {
            length = 1;
        } else if (length * pixelsPerMm < 24) {
            length = 20;
        }
        double size = Math.max(9, pixels.height() / 46.0);
        double left = 1.6 * size;
        double right = left + length * pixelsPerMm;
        double low = pixels.height() - 1.6 * size;
        double line = Math.max(1, size / 8);
        Canvas canvas = new Canvas(pixels);
        canvas.stroke(new double[] {left, low, right, low}, line, INK);
        canvas.stroke(new double[] {left, low - size / 3, left, low + size / 3}, line, INK);
        canvas.stroke(new double[] {right, low - size / 3, right, low + size / 3}, line, INK);
        StrokeText.draw(
                canvas, length + " mm", (left + right) / 2, low - 0.7 * size, size, StrokeText.Anchor.MIDDLE, INK);
    }
}
