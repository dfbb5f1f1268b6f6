// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.app;

/** Ends a verb with a sentence and exit code 2. Thrown and caught in this package only. */
final class UsageFault extends Exception {
    UsageFault(String message) {
        super(message);
    }

    /** The sentence; never missing. */
    String sentence() {
        String message = getMessage();
        return message == null ? "" : message;
    }
}
