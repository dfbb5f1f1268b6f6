// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.protocol;

/** Why a kernel cannot be reached as a connection file wants it. */
public final class ConnectionFault extends Exception {
    ConnectionFault(String message) {
        super(message);
    }

    /** As a sentence; never missing. */
    public String sentence() {
        String message = getMessage();
        return message == null ? "" : message;
    }
}
