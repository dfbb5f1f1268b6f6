// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.catalogue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** Sums of bytes that change when any byte does. */
public final class Digests {
    private static final int BLOCK = 1 << 16;

    private Digests() {}

    /** SHA-256 of a file's bytes, in lower-case hexadecimal digits. */
    static String sha256(Path file) throws IOException {
        MessageDigest digest = digest();
        byte[] block = new byte[BLOCK];
        try (InputStream bytes = Files.newInputStream(file)) {
            for (int read = bytes.read(block); read >= 0; read = bytes.read(block)) {
                digest.update(block, 0, read);
            }
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    /** SHA-256 of a text in UTF-8. */
    public static String sha256(String text) {
        return HexFormat.of().formatHex(digest().digest(text.getBytes(StandardCharsets.UTF_8)));
    }

    static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }
}
