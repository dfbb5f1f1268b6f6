// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.diagnostic;

/** How much a diagnostic matters. */
public enum Severity {
    /** The cell changes nothing. */
    ERROR("error"),
    /** The cell works, yet something deserves a look. */
    WARNING("warning"),
    /** Worth knowing. */
    NOTE("note");

    private final String word;

    Severity(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
