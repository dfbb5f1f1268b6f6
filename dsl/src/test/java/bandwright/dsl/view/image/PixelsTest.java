// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.image;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import java.util.Random;
import javax.imageio.ImageIO;

import org.junit.jupiter.api.Test;

import bandwright.dsl.view.Picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

class PixelsTest {
    @Test
    void another_reader_of_png_finds_the_same_pixels() throws IOException {
        // Large enough to be packed in two pieces.
        Random random = new Random(7);
        Pixels pixels = new Pixels(401, 300, 0);
        for (int y = 0; y < 300; y++) {
            for (int x = 0; x < 401; x++) {
                pixels.set(x, y, random.nextInt(1 << 24));
            }
        }

        Picture picture = pixels.toPicture("noise");
        BufferedImage read = ImageIO.read(new ByteArrayInputStream(picture.png()));

        assertThat(read.getWidth()).isEqualTo(picture.width()).isEqualTo(401);
        int differ = 0;
        for (int y = 0; y < 300; y++) {
            for (int x = 0; x < 401; x++) {
                differ += (read.getRGB(x, y) & 0xffffff) == pixels.at(x, y) ? 0 : 1;
            }
        }
        assertThat(differ).isZero();
    }

    @Test
    void a_filled_shape_covers_its_area_without_its_hole() {
        Pixels pixels = new Pixels(60, 60, 0);
        double[] outer = {5.3, 4.1, 51.7, 9.9, 40.2, 55.5};
        double[] hole = {25.1, 15.2, 35.6, 15.2, 35.6, 25.7, 25.1, 25.7};

        new Canvas(pixels).fill(List.of(outer, hole), 0xffffff);

        double sum = 0;
        for (int y = 0; y < 60; y++) {
            for (int x = 0; x < 60; x++) {
                sum += Srgb.linear(pixels.at(x, y) & 255);
            }
        }
        double triangle = ((51.7 - 5.3) * (55.5 - 4.1) - (40.2 - 5.3) * (9.9 - 4.1)) / 2;
        assertThat(sum).isCloseTo(triangle - 10.5 * 10.5, within(1.5));
    }

    @Test
    void codes_and_light_undo_each_other() {
        for (int code = 0; code < 256; code++) {
            double light = Srgb.linear(code);
            assertThat(Srgb.code(light, light, light) & 255).isEqualTo(code);
        }
    }

    @Test
    void what_labels_are_written_with_has_strokes_and_accents_are_dropped() {
        String drawn = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789.,:;-+=/()%°×'\"<>?";

        StrokeFont.Glyph unknown = StrokeFont.glyph(0x4e2d);
        drawn.codePoints()
                .forEach(character -> assertThat(StrokeFont.glyph(character))
                        .as(Character.toString(character))
                        .isNotSameAs(unknown));
        assertThat(StrokeFont.glyph('é')).isSameAs(StrokeFont.glyph('e'));
    }
}
