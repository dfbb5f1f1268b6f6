// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.install;

/** Why the kernel could not be installed or taken away. */
public final class InstallFault extends Exception {
    InstallFault(String message) {
        super(message);
    }

    /** As a sentence; never missing. */
    public String sentence() {
        String message = getMessage();
        return message == null ? "" : message;
    }
}
