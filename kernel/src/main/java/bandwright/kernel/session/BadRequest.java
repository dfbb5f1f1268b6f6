// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.session;

/** What is missing in a request that is a message otherwise. Thrown and caught in this package only. */
final class BadRequest extends Exception {
    BadRequest(String message) {
        super(message);
    }

    /** In a few words; never missing. */
    String sentence() {
        String message = getMessage();
        return message == null ? "" : message;
    }
}
