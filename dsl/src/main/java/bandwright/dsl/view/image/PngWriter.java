// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.image;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
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
        byte[] above = new byte[stride];
        byte[] row = new byte[stride];
        byte[] filtered = new byte[(stride + 1) * pixels.height()];
        int at = 0;
        for (int y = 0; y < pixels.height(); y++) {
            for (int x = 0; x < pixels.width(); x++) {
                int colour = pixels.at(x, y);
                row[3 * x] = (byte) (colour >> 16);
                row[3 * x + 1] = (byte) (colour >> 8);
                row[3 * x + 2] = (byte) colour;
            }
            filtered[at++] = PAETH;
            for (int i = 0; i < stride; i++) {
                int left = i < 3 ? 0 : row[i - 3] & 255;
                int corner = i < 3 ? 0 : above[i - 3] & 255;
                filtered[at++] = (byte) (row[i] - predicted(left, above[i] & 255, corner));
            }
            byte[] free = above;
            above = row;
            row = free;
        }
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

    private static byte[] packed(byte[] plain) {
        Deflater deflater = new Deflater(6);
        try {
            deflater.setInput(plain);
            deflater.finish();
            ByteArrayOutputStream packed = new ByteArrayOutputStream();
            byte[] buffer = new byte[65536];
            while (!deflater.finished()) {
                packed.write(buffer, 0, deflater.deflate(buffer));
            }
            return packed.toByteArray();
        } finally {
            deflater.end();
        }
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
        Adler32 check = new Adler32();
        check.update(plain);
        byte[] sum = new byte[4];
        putInt(sum, 0, (int) check.getValue());
        stored.writeBytes(sum);
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
