// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.protocol;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/** Signs the four parts of a message with the key that only kernel and clients know. With an empty key nothing is signed. */
public final class Signature {
    private static final Map<String, String> SCHEMES =
            Map.of("hmac-sha256", "HmacSHA256", "hmac-sha384", "HmacSHA384", "hmac-sha512", "HmacSHA512");

    private final String algorithm;
    private final byte[] key;

    private Signature(String algorithm, byte[] key) {
        this.algorithm = algorithm;
        this.key = key;
    }

    static Signature of(String scheme, String key) throws ConnectionFault {
        String algorithm = SCHEMES.get(scheme);
        if (algorithm == null) {
            throw new ConnectionFault("the connection file asks for signatures by '" + scheme
                    + "', which this kernel does not know; it knows hmac-sha256");
        }
        return new Signature(algorithm, key.getBytes(StandardCharsets.UTF_8));
    }

    /** Whether messages are signed at all. */
    boolean signs() {
        return key.length > 0;
    }

    /** In hexadecimal digits; empty without a key. */
    byte[] sign(List<byte[]> parts) {
        if (!signs()) {
            return new byte[0];
        }
        try {
            Mac mac = Mac.getInstance(algorithm);
            mac.init(new SecretKeySpec(key, algorithm));
            parts.forEach(mac::update);
            return HexFormat.of().formatHex(mac.doFinal()).getBytes(StandardCharsets.US_ASCII);
        } catch (GeneralSecurityException failure) {
            throw new IllegalStateException("every Java has " + algorithm, failure);
        }
    }

    /** Takes the same time for every wrong signature, so that none can be guessed digit by digit. */
    boolean fits(byte[] signature, List<byte[]> parts) {
        return MessageDigest.isEqual(signature, sign(parts));
    }
}
