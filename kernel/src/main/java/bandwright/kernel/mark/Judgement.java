// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.mark;

import java.util.StringJoiner;

import bandwright.dsl.Answer;

/**
 * How a condition came out.
 *
 * @param says what was measured and by how much it passed or failed, or why it could not be worked out
 */
public record Judgement(String condition, boolean passed, String says) {
    public Judgement {
        // Both can hold what somebody else has written.
        condition = Works.printable(condition);
        says = Works.printable(says);
    }

    static Judgement of(Answer.Requirement requirement) {
        StringJoiner says = new StringJoiner(", ");
        if (requirement.measured() != null) {
            says.add("it is " + requirement.measured());
        }
        Answer.Margin margin = requirement.margin();
        if (margin != null) {
            says.add(margin.text() + (requirement.passed() ? " to spare" : " off"));
        }
        if (requirement.trouble() != null) {
            says.add(requirement.trouble());
        }
        return new Judgement(
                Marking.shortened(requirement.text()), requirement.passed(), Marking.shortened(says.toString()));
    }
}
