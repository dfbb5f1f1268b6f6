// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.export.threemf;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;

/**
 * A zip archive whose files are stored as they are (PKWARE, .ZIP File Format Specification 6.3). Packed, its bytes would hang on the
 * zlib of the machine; Java's own writer would put in the time.
 */
final class StoredZip {
    private static final int LOCAL = 0x04034b50;
    private static final int CENTRAL = 0x02014b50;
    private static final int END = 0x06054b50;
    private static final int VERSION = 20;
    /** Names are in UTF-8. */
    private static final int FLAGS = 0x0800;
    /** The first day the format knows: 1 January 1980. */
    private static final int DAY = 0x0021;

    private final ByteArrayOutputStream archive = new ByteArrayOutputStream();
    private final ByteArrayOutputStream directory = new ByteArrayOutputStream();
    private int count;

    void add(String name, byte[] bytes) {
        byte[] path = name.getBytes(StandardCharsets.UTF_8);
        int offset = archive.size();
        ByteArrayOutputStream common = new ByteArrayOutputStream();
        put(common, 2, VERSION, FLAGS, 0, 0, DAY);
        put(common, 4, check(bytes), bytes.length, bytes.length);
        put(common, 2, path.length, 0);
        put(archive, 4, LOCAL);
        archive.writeBytes(common.toByteArray());
        archive.writeBytes(path);
        archive.writeBytes(bytes);
        put(directory, 4, CENTRAL);
        put(directory, 2, VERSION);
        directory.writeBytes(common.toByteArray());
        // No comment, first disk, no attributes, and where the file begins.
        put(directory, 2, 0, 0, 0);
        put(directory, 4, 0, offset);
        directory.writeBytes(path);
        count++;
    }

    /** The whole archive; nothing can be added any more. */
    byte[] bytes() {
        int start = archive.size();
        archive.writeBytes(directory.toByteArray());
        put(archive, 4, END);
        put(archive, 2, 0, 0, count, count);
        put(archive, 4, directory.size(), start);
        put(archive, 2, 0);
        return archive.toByteArray();
    }

    private static int check(byte[] bytes) {
        CRC32 check = new CRC32();
        check.update(bytes);
        return (int) check.getValue();
    }

    /** Numbers of so many bytes each, the lowest first. */
    private static void put(ByteArrayOutputStream out, int size, int... numbers) {
        for (int number : numbers) {
            for (int i = 0; i < size; i++) {
                out.write(number >> (8 * i));
            }
        }
    }
}
