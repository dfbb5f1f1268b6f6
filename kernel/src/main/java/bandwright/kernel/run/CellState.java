// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.run;

/** How a cell came out. */
public enum CellState {
    DONE("done"),
    /** Something it asked has no answer, because what it needs is not there. */
    UNANSWERED("waiting"),
    REQUIRE_FAILED("require failed"),
    ERROR("error"),
    /** Text, an empty cell, or one marked not to be run. */
    NOT_RUN("not run");

    private final String words;

    CellState(String words) {
        this.words = words;
    }

    /** As people read it. */
    public String words() {
        return words;
    }
}
