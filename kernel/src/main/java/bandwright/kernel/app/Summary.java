// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.app;

import java.util.ArrayList;
import java.util.List;

import bandwright.dsl.Answer;
import bandwright.dsl.Report;
import bandwright.dsl.check.Findings;
import bandwright.kernel.display.Decimals;
import bandwright.kernel.display.Headlines;

/** The headline numbers as text for a screen. */
final class Summary {
    private Summary() {}

    /** Ends with a line feed; without any numbers it says so. */
    static String text(Report report) {
        return text(report, "There is no ring to measure.");
    }

    /**
     * Ends with a line feed.
     *
     * @param otherwise what is said where there are no numbers
     */
    static String text(Report report, String otherwise) {
        List<String> blocks = new ArrayList<>();
        String head = head(report);
        if (!head.isEmpty()) {
            blocks.add(head);
        }
        if (!report.parts().isEmpty()) {
            blocks.add(Headlines.parts(report).plainText());
        }
        if (!report.stoneRows().isEmpty()) {
            blocks.add(Headlines.stones(report).plainText());
        }
        if (!report.requirements().isEmpty()) {
            blocks.add(requirements(report));
        }
        new Findings(report.checks()).failedInShort().ifPresent(failed -> blocks.add("checks  " + failed + "\n"));
        if (blocks.isEmpty()) {
            blocks.add(otherwise + "\n");
        }
        if (!report.fingerprint().isEmpty()) {
            blocks.add("fingerprint  " + report.fingerprint() + "\n");
        }
        return String.join("\n", blocks);
    }

    private static String head(Report report) {
        StringBuilder head = new StringBuilder();
        String title = report.title();
        if (title != null) {
            head.append("title   ").append(title).append('\n');
        }
        Headlines.finger(report)
                .ifPresent(finger -> head.append("finger  ").append(finger).append('\n'));
        if (!report.parts().isEmpty()) {
            head.append("metal   ")
                    .append(Decimals.plain(report.totalWeightG(), 3))
                    .append(" g\n");
        }
        return head.toString();
    }

    private static String requirements(Report report) {
        long passed = report.requirements().stream()
                .filter(Answer.Requirement::passed)
                .count();
        long failed = report.requirements().size() - passed;
        StringBuilder text = new StringBuilder("Requirements: " + passed + " passed, " + failed + " failed\n\n");
        report.requirements()
                .forEach(requirement -> text.append(requirement.sentence()).append('\n'));
        return text.toString();
    }
}
