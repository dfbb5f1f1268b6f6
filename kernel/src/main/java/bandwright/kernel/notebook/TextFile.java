// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.notebook;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

import org.jspecify.annotations.Nullable;

/**
 * A file read as UTF-8 text.
 *
 * @param fault why it could not be read, as a sentence; then the text is empty
 */
record TextFile(String text, @Nullable String fault) {
    /** Nobody writes so much by hand; a notebook with its pictures stays far below. */
    private static final int LARGEST_BYTES = 20 * 1000 * 1000;

    static TextFile read(Path file) {
        if (!Files.exists(file)) {
            return faulty("there is no file " + file);
        }
        if (Files.isDirectory(file)) {
            return faulty(file + " is a folder, not a file");
        }
        if (!Files.isRegularFile(file)) {
            return faulty(file + " is not a regular file");
        }
        byte[] bytes;
        try (InputStream stream = Files.newInputStream(file)) {
            bytes = stream.readNBytes(LARGEST_BYTES + 1);
        } catch (IOException failure) {
            return faulty(file + " cannot be read");
        }
        if (bytes.length > LARGEST_BYTES) {
            return faulty(file + " is larger than 20 MB");
        }
        return decode(file, bytes);
    }

    private static TextFile decode(Path file, byte[] bytes) {
        String binary = file + " holds binary data, not UTF-8 text";
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            // No text has zero characters in it; the mark some editors put at the start is not part of the text.
            return text.indexOf('\0') >= 0
                    ? faulty(binary)
                    : new TextFile(text.startsWith("\uFEFF") ? text.substring(1) : text, null);
        } catch (CharacterCodingException failure) {
            return faulty(binary);
        }
    }

    private static TextFile faulty(String fault) {
        return new TextFile("", fault);
    }
}
