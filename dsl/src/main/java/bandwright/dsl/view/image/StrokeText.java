// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.image;

import java.util.ArrayList;
import java.util.List;

/** Text made of strokes, so that no installed font is needed and the pixels are the same everywhere. */
public final class StrokeText {
    /** Height of a capital letter as a share of the text's size, as with common sans-serif fonts. */
    private static final double CAPITAL = 0.72;

    private static final double GRID_CAPITAL = 8;

    /** Between two letters, in grid units. */
    private static final double GAP = 1.7;

    private static final double SPACE = 3;

    private StrokeText() {}

    /** Which end of the text its place is. */
    public enum Anchor {
        START,
        MIDDLE,
        END
    }

    /** The width of a text in units of its size. */
    public static double width(String text) {
        double width = text.isEmpty() ? 0 : -GAP;
        for (int character : text.codePoints().toArray()) {
            width += GAP
                    + (character == ' ' ? SPACE : StrokeFont.glyph(character).width());
        }
        return width * CAPITAL / GRID_CAPITAL;
    }

    /** Draws a level text; {@code x}, {@code y} are pixels, y that of the base line. */
    public static void draw(Canvas canvas, String text, double x, double y, double size, Anchor anchor, int colour) {
        draw(canvas, text, x, y, size, anchor, false, colour);
    }

    /** Draws a text, level or running upwards (turned left by a quarter). */
    public static void draw(
            Canvas canvas, String text, double x, double y, double size, Anchor anchor, boolean upwards, int colour) {
        double unit = size * CAPITAL / GRID_CAPITAL;
        double shift = switch (anchor) {
            case START -> 0;
            case MIDDLE -> -width(text) * size / 2;
            case END -> -width(text) * size;
        };
        double pen = shift;
        for (int character : text.codePoints().toArray()) {
            if (character == ' ') {
                pen += (SPACE + GAP) * unit;
                continue;
            }
            StrokeFont.Glyph glyph = StrokeFont.glyph(character);
            for (double[] stroke : glyph.strokes()) {
                canvas.stroke(placed(stroke, x, y, pen, unit, upwards), Math.max(1, size / 11), colour);
            }
            pen += (glyph.width() + GAP) * unit;
        }
    }

    private static double[] placed(double[] stroke, double x, double y, double pen, double unit, boolean upwards) {
        double[] placed = new double[stroke.length];
        for (int i = 0; i < stroke.length; i += 2) {
            double along = pen + stroke[i] * unit;
            double up = stroke[i + 1] * unit;
            placed[i] = upwards ? x - up : x + along;
            placed[i + 1] = upwards ? y - along : y - up;
        }
        return placed;
    }

    /** A smooth curve through points x, y, x, y … (Catmull and Rom, 1974), six pieces between two of them. */
    static double[] smooth(double[] points) {
        int count = points.length / 2;
        boolean closed = points[0] == points[2 * count - 2] && points[1] == points[2 * count - 1];
        List<Double> curve = new ArrayList<>(List.of(points[0], points[1]));
        for (int i = 0; i + 1 < count; i++) {
            int before = i > 0 ? i - 1 : closed ? count - 2 : 0;
            int after = i + 2 < count ? i + 2 : closed ? 1 : count - 1;
            for (int step = 1; step <= 6; step++) {
                double t = step / 6.0;
                for (int k = 0; k < 2; k++) {
                    double a = points[2 * before + k];
                    double b = points[2 * i + k];
                    double c = points[2 * i + 2 + k];
                    double d = points[2 * after + k];
                    curve.add(0.5
                            * (2 * b
                                    + (c - a) * t
                                    + (2 * a - 5 * b + 4 * c - d) * t * t
                                    + (3 * b - a - 3 * c + d) * t * t * t));
                }
            }
        }
        return curve.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
