// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.mark;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.Answer;
import bandwright.dsl.Judged;
import bandwright.dsl.Workbench;
import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.source.SourceText;
import bandwright.kernel.cell.Guard;

/**
 * What works are marked by: the {@code require} lines of a text.
 *
 * @param lines in the order of the text
 * @param diagnostics what is wrong with the text
 */
public record Key(List<Line> lines, List<Diagnostic> diagnostics) {
    /** Points before a reason: {@code [3] walls as asked}, {@code [1.5 points] …}, {@code [1/2]}, {@code [1 1/2]}. */
    private static final Pattern POINTS = Pattern.compile(
            "\\s*\\[\\s*(\\d{1,4}(?:\\.\\d{1,3})?(?!/|\\d))?\\s*(?:(\\d{1,4})/([1-9]\\d{0,3}))?\\s*(?:points?)?\\s*]\\s*(.*)",
            Pattern.DOTALL);

    public Key {
        lines = List.copyOf(lines);
        diagnostics = List.copyOf(diagnostics);
    }

    /**
     * A condition.
     *
     * @param reason given with it, without its points; empty if there is none
     */
    public record Line(String condition, String reason, double points) {
        /** The condition, and the reason where there is one. */
        public String words() {
            return reason.isEmpty() ? condition : condition + " \u2013 " + reason;
        }
    }

    /** @param points of a line that names none */
    public static Key read(SourceText text, double points) {
        Judged judged = Guard.judged(Workbench.empty(), text);
        return new Key(
                judged.requirements().stream()
                        .map(requirement -> line(requirement, points))
                        .toList(),
                judged.diagnostics());
    }

    private static Line line(Answer.Requirement requirement, double points) {
        @Nullable String because = requirement.because();
        String reason = because == null ? "" : because;
        Matcher matcher = POINTS.matcher(reason);
        if (!matcher.matches() || (matcher.group(1) == null && matcher.group(2) == null)) {
            return new Line(requirement.text(), reason, points);
        }
        double whole = matcher.group(1) == null ? 0 : Double.parseDouble(matcher.group(1));
        double part = matcher.group(2) == null
                ? 0
                : Double.parseDouble(matcher.group(2)) / Double.parseDouble(matcher.group(3));
        return new Line(requirement.text(), matcher.group(4).strip(), whole + part);
    }

    /** Of all lines together. */
    public double points() {
        return lines.stream().mapToDouble(Line::points).sum();
    }
}
