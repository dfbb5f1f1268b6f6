// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.image;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The letters of {@code strokes.txt}. */
final class StrokeFont {
    private static final Map<Integer, Glyph> GLYPHS = read();

    /** A box. */
    private static final Glyph UNKNOWN = new Glyph(4, List.of(new double[] {0, 0, 4, 0, 4, 8, 0, 8, 0, 0}));

    private StrokeFont() {}

    /** Strokes as x, y, x, y … on the file's grid. */
    record Glyph(double width, List<double[]> strokes) {}

    /** A letter; one that is not in the file by its plain letter without accents, or a box. */
    static Glyph glyph(int character) {
        Glyph glyph = GLYPHS.get(character);
        if (glyph == null) {
            int plain = Normalizer.normalize(Character.toString(character), Normalizer.Form.NFD)
                    .codePointAt(0);
            glyph = GLYPHS.get(plain);
        }
        return glyph == null ? UNKNOWN : glyph;
    }

    private static Map<Integer, Glyph> read() {
        Map<Integer, Glyph> glyphs = new HashMap<>();
        try (InputStream file = StrokeFont.class.getResourceAsStream("strokes.txt")) {
            if (file == null) {
                throw new IllegalStateException("strokes.txt is missing");
            }
            for (String line : new String(file.readAllBytes(), StandardCharsets.UTF_8).split("\n", -1)) {
                if (!line.isEmpty() && !line.startsWith("# ")) {
                    int space = line.indexOf(' ', 1);
                    int next = line.indexOf(' ', space + 1);
                    glyphs.put(
                            line.codePointAt(0),
                            new Glyph(
                                    Double.parseDouble(line.substring(space + 1, next)),
                                    strokes(line.substring(next + 1))));
                }
            }
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
        return glyphs;
    }

    private static List<double[]> strokes(String text) {
        List<double[]> strokes = new ArrayList<>();
        for (String stroke : text.split("\\|", -1)) {
            boolean curved = stroke.strip().startsWith("~");
            String[] numbers = stroke.replace("~", "").strip().split(" +", -1);
            double[] points = new double[numbers.length];
            for (int i = 0; i < points.length; i++) {
                points[i] = Double.parseDouble(numbers[i]);
            }
            strokes.add(curved ? StrokeText.smooth(points) : points);
        }
        return strokes;
    }
}
