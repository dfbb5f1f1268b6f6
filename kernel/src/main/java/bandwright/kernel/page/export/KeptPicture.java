// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.export;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Base64;
import java.util.Iterator;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.view.Picture;

/** A picture kept in a Markdown cell, as pixels for paper. */
final class KeptPicture {
    /** More pixels than any page shows; a small file can claim to hold many. */
    private static final long MOST_PIXELS = 40_000_000;

    private KeptPicture() {}

    /**
     * @param data its {@code data:} address
     * @return nothing if it cannot be read
     */
    static @Nullable Picture of(String data, String words) {
        try {
            byte[] bytes = Base64.getDecoder().decode(data.substring(data.indexOf(',') + 1));
            BufferedImage image = read(bytes);
            if (image == null) {
                return null;
            }
            ByteArrayOutputStream png = new ByteArrayOutputStream();
            ImageIO.write(image, "png", png);
            return new Picture(image.getWidth(), image.getHeight(), png.toByteArray(), words);
        } catch (IOException | IllegalArgumentException unreadable) {
            return null;
        }
    }

    private static @Nullable BufferedImage read(byte[] bytes) throws IOException {
        try (ImageInputStream stream = ImageIO.createImageInputStream(new ByteArrayInputStream(bytes))) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(stream);
            if (!readers.hasNext()) {
                return null;
            }
            ImageReader reader = readers.next();
            try {
                reader.setInput(stream);
                boolean fits = (long) reader.getWidth(0) * reader.getHeight(0) <= MOST_PIXELS;
                return fits ? reader.read(0) : null;
            } finally {
                reader.dispose();
            }
        }
    }
}
