// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.design;

import java.util.List;
import java.util.stream.Collectors;

import bandwright.dsl.Answer;

/** What ring text showed: pictures, tables, values. As a cell's last value, or given to {@link Cell#display}, it is seen as from ring text. */
public record Shown(List<Answer> answers) {
    public Shown {
        answers = List.copyOf(answers);
    }

    /** In plain text. */
    @Override
    public String toString() {
        return answers.stream().map(Answer::plainText).collect(Collectors.joining("\n"));
    }
}
