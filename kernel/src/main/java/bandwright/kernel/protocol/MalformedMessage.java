// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.protocol;

/** Why something that came in cannot be taken for a message. */
public final class MalformedMessage extends Exception {
    MalformedMessage(String message) {
        super(message);
    }

    /** In a few words; never missing. */
    public String reason() {
        String message = getMessage();
        return message == null ? "" : message;
    }
}
