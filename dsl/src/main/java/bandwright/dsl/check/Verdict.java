// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

/** How a check came out, in the order in which they are shown. */
public enum Verdict {
    FAILED("failed"),
    CLOSE("close"),
    CAUTION("caution"),
    NOT_LOOKED_AT("not looked at"),
    PASSED("passed");

    private final String word;

    Verdict(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
