// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.cell;

import bandwright.dsl.Answer;
import bandwright.dsl.Outcome;

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

    /** Of a cell that was run. */
    public static CellState of(Outcome outcome) {
        if (outcome.hasErrors()) {
            return ERROR;
        }
        if (outcome.unanswered() > 0) {
            return UNANSWERED;
        }
        boolean failed = outcome.answers().stream()
                .anyMatch(answer -> answer instanceof Answer.Required required
                        && !required.requirement().passed());
        return failed ? REQUIRE_FAILED : DONE;
    }

    /** As people read it. */
    public String words() {
        return words;
    }
}
