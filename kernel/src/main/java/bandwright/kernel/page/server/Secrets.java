// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.server;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;

/** Words that nobody can guess: 192 bits of chance each. */
final class Secrets {
    private static final int BYTES = 24;

    private final SecureRandom chance = new SecureRandom();

    String fresh() {
        byte[] bytes = new byte[BYTES];
        chance.nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    /** Whether two are the same, in a time that does not tell how far they agree. */
    static boolean same(String secret, String given) {
        return MessageDigest.isEqual(secret.getBytes(StandardCharsets.UTF_8), given.getBytes(StandardCharsets.UTF_8));
    }
}
