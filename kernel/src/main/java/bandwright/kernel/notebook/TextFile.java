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
        if (isSixteenBit(bytes)) {
            return faulty(file + " is text in UTF-16; save it as UTF-8");
        }
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

    /** By the mark that editors put at its start. */
    private static boolean isSixteenBit(byte[] bytes) {
        return bytes.length >= 2
                && bytes.length % 2 == 0
                && ((bytes[0] == (byte) 0xFF && bytes[1] == (byte) 0xFE)
                        || (bytes[0] == (byte) 0xFE && bytes[1] == (byte) 0xFF));
    }

    private static TextFile faulty(String fault) {
        return new TextFile("", fault);
    }
}
