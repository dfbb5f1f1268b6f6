// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.app;

import java.util.List;
import java.util.stream.Stream;

import bandwright.dsl.Answer;
import bandwright.kernel.run.NotebookRun;

/** Answers as text for a screen, in the order in which they were asked for. */
final class AnswerText {
    /** What is longer is read in the page; a table of all metals is not. */
    private static final int MOST_LINES = 100;

    private AnswerText() {}

    /** What requirements came to and which files were written is told elsewhere; a picture is told in words. */
    static List<String> of(NotebookRun run) {
        return answers(run)
                .map(answer -> shortened(answer.plainText().stripTrailing()))
                .filter(text -> !text.isEmpty())
                .toList();
    }

    /** Whether the files hold more than the numbers that are told at the end. */
    static boolean isSeenElsewhere(NotebookRun run) {
        return answers(run).findAny().isPresent();
    }

    private static Stream<Answer> answers(NotebookRun run) {
        return run.cells().stream()
                .flatMap(cell -> cell.answers().stream())
                .filter(answer -> !(answer instanceof Answer.Required || answer instanceof Answer.Exported));
    }

    private static String shortened(String text) {
        List<String> lines = text.lines().toList();
        int more = lines.size() - MOST_LINES;
        return more <= 0
                ? text
                : String.join("\n", lines.subList(0, MOST_LINES)) + "\n… and " + more + " more lines in the page";
    }
}
