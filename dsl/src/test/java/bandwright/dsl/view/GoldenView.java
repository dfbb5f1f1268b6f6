// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

import bandwright.dsl.view.image.Pixels;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

/** Compares with the files in {@code src/test/golden/view}; writes what is missing, and all with {@code -Dgolden=update}. */
public final class GoldenView {
    private static final Path FOLDER = Path.of("src", "test", "golden", "view");

    private GoldenView() {}

    public static void check(String name, String actual) {
        Path file = FOLDER.resolve(name);
        try {
            if ("update".equals(System.getProperty("golden"))) {
                Files.createDirectories(FOLDER);
                Files.writeString(file, actual);
            } else if (!Files.exists(file)) {
                Files.createDirectories(FOLDER);
                Files.writeString(file, actual);
                fail("%s was missing and has been written; look at it and run again", file);
            }
            assertThat(actual).as(name).isEqualTo(Files.readString(file));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    /** Of pixels the fingerprint is kept: packed bytes of a PNG file depend on the platform's zlib. */
    public static void check(String name, Pixels pixels) {
        check(name, fingerprint(pixels) + "\n");
    }

    public static String fingerprint(Pixels pixels) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            for (int y = 0; y < pixels.height(); y++) {
                for (int x = 0; x < pixels.width(); x++) {
                    int colour = pixels.at(x, y);
                    digest.update(new byte[] {(byte) (colour >> 16), (byte) (colour >> 8), (byte) colour});
                }
            }
            return pixels.width() + "x" + pixels.height() + " " + HexFormat.of().formatHex(digest.digest());
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
