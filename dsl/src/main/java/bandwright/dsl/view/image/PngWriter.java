// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.image;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.stream.IntStream;
import java.util.zip.Adler32;
import java.util.zip.CRC32;
import java.util.zip.Deflater;

/**
 * Writes pixels as a PNG file (ISO/IEC 15948): eight bits a channel, no transparency, every row with the Paeth filter. The
 * pixels are the same everywhere; how the packed bytes look is up to the platform's zlib.
 */
final class PngWriter {
    private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};
    private static final int PAETH = 4;
    private static final int LONGEST_BLOCK = 65_535;

    /** Plain bytes that are packed in one go. */
    private static final int PIECE = 1 << 18;

    /** How far back packed bytes may refer (RFC 1951, 2). */
    private static final int WINDOW = 1 << 15;

    private PngWriter() {}

    static byte[] write(Pixels pixels) {
        return write(pixels, packed(filtered(pixels)));
    }

    /** With pixels that are not packed, so that no byte is up to the platform. */
    static byte[] writePlain(Pixels pixels) {
        return write(pixels, stored(filtered(pixels)));
    }

    private static byte[] write(Pixels pixels, byte[] data) {
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        file.writeBytes(SIGNATURE);
        chunk(file, "IHDR", header(pixels));
        // One intent byte: the colours are sRGB, shown perceptually.
        chunk(file, "sRGB", new byte[] {0});
        chunk(file, "IDAT", data);
        chunk(file, "IEND", new byte[0]);
        return file.toByteArray();
    }

    private static byte[] header(Pixels pixels) {
        byte[] header = new byte[13];
        putInt(header, 0, pixels.width());
        putInt(header, 4, pixels.height());
        header[8] = 8;
        header[9] = 2;
        return header;
    }

    private static byte[] filtered(Pixels pixels) {
        int stride = 3 * pixels.width();
        byte[] filtered = new byte[(stride + 1) * pixels.height()];
        IntStream.range(0, pixels.height()).parallel().forEach(y -> {
            int at = (stride + 1) * y;
            filtered[at++] = PAETH;
            int left = 0;
            int corner = 0;
            for (int x = 0; x < pixels.width(); x++) {
                int here = pixels.at(x, y);
                int above = y == 0 ? 0 : pixels.at(x, y - 1);
                for (int shift = 16; shift >= 0; shift -= 8) {
                    int guess = predicted(left >> shift & 255, above >> shift & 255, corner >> shift & 255);
                    filtered[at++] = (byte) ((here >> shift) - guess);
                }
                left = here;
                corner = above;
            }
        });
        return filtered;
    }

    private static int predicted(int left, int above, int corner) {
        int guess = left + above - corner;
        int toLeft = Math.abs(guess - left);
        int toAbove = Math.abs(guess - above);
        int toCorner = Math.abs(guess - corner);
        if (toLeft <= toAbove && toLeft <= toCorner) {
            return left;
        }
        return toAbove <= toCorner ? above : corner;
    }

    /**
     * A zlib stream (RFC 1950), packed piece by piece on all cores. Each piece but the last ends at a whole byte (an empty stored
     * block, RFC 1951, 3.2.4), and each knows the plain bytes before it, so that one can follow the other. Where pieces
     * end depends on nothing but the length.
     */
    private static byte[] packed(byte[] plain) {
        ByteArrayOutputStream packed = new ByteArrayOutputStream(plain.length / 4);
        packed.write(0x78);
        packed.write(0x9c);
        int pieces = Math.max(1, (plain.length + PIECE - 1) / PIECE);
        IntStream.range(0, pieces)
                .parallel()
                .mapToObj(piece -> packed(plain, piece * PIECE, Math.min(plain.length, (piece + 1) * PIECE)))
                .forEachOrdered(packed::writeBytes);
        packed.writeBytes(check(plain));
        return packed.toByteArray();
    }

    private static byte[] packed(byte[] plain, int from, int to) {
        Deflater deflater = new Deflater(6, true);
        try {
            int known = Math.min(from, WINDOW);
            if (known > 0) {
                deflater.setDictionary(plain, from - known, known);
            }
            deflater.setInput(plain, from, to - from);
            boolean last = to == plain.length;
            if (last) {
                deflater.finish();
            }
            ByteArrayOutputStream packed = new ByteArrayOutputStream();
            byte[] buffer = new byte[65536];
            int length;
            do {
                length = deflater.deflate(buffer, 0, buffer.length, last ? Deflater.NO_FLUSH : Deflater.SYNC_FLUSH);
                packed.write(buffer, 0, length);
            } while (length == buffer.length);
            return packed.toByteArray();
        } finally {
            deflater.end();
        }
    }

    private static byte[] check(byte[] plain) {
        Adler32 check = new Adler32();
        check.update(plain);
        byte[] sum = new byte[4];
        putInt(sum, 0, (int) check.getValue());
        return sum;
    }

    /** A zlib stream (RFC 1950) of stored blocks (RFC 1951, 3.2.4). */
    private static byte[] stored(byte[] plain) {
        ByteArrayOutputStream stored = new ByteArrayOutputStream();
        stored.write(0x78);
        stored.write(0x01);
        for (int at = 0; at < plain.length; at += LONGEST_BLOCK) {
            int length = Math.min(LONGEST_BLOCK, plain.length - at);
            stored.write(at + length == plain.length ? 1 : 0);
            stored.write(length);
            stored.write(length >> 8);
            stored.write(~length);
            stored.write(~length >> 8);
            stored.write(plain, at, length);
        }
        stored.writeBytes(check(plain));
        return stored.toByteArray();
    }

    private static void chunk(ByteArrayOutputStream file, String type, byte[] data) {
        byte[] number = new byte[4];
        putInt(number, 0, data.length);
        file.writeBytes(number);
        byte[] name = type.getBytes(StandardCharsets.US_ASCII);
        CRC32 check = new CRC32();
        check.update(name);
        check.update(data);
        file.writeBytes(name);
        file.writeBytes(data);
        putInt(number, 0, (int) check.getValue());
        file.writeBytes(number);
    }

    private static void putInt(byte[] bytes, int at, int value) {
        bytes[at] = (byte) (value >> 24);
        bytes[at + 1] = (byte) (value >> 16);
        bytes[at + 2] = (byte) (value >> 8);
        bytes[at + 3] = (byte) value;
    }
}
