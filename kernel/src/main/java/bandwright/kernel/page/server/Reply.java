// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.server;

import java.nio.charset.StandardCharsets;

/**
 * What it gets.
 *
 * @param type a MIME type
 * @param body they belong to the reply and nobody writes to them
 */
@SuppressWarnings("ArrayRecordComponent")
public record Reply(int status, String type, byte[] body) {
    public static Reply html(String text) {
        return new Reply(200, "text/html; charset=utf-8", text.getBytes(StandardCharsets.UTF_8));
    }

    public static Reply json(String text) {
        return json(200, text);
    }

    public static Reply json(int status, String text) {
        return new Reply(status, "application/json; charset=utf-8", text.getBytes(StandardCharsets.UTF_8));
    }

    /** A sentence, of a person or for one. */
    public static Reply words(int status, String sentence) {
        return new Reply(status, "text/plain; charset=utf-8", (sentence + "\n").getBytes(StandardCharsets.UTF_8));
    }
}
