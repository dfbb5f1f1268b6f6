// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.edit;

import java.util.List;
import java.util.Set;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.parse.ParseResult;
import bandwright.dsl.parse.RingParser;
import bandwright.dsl.parse.TextWord;
import bandwright.dsl.parse.TextWords;
import bandwright.dsl.source.Place;
import bandwright.dsl.source.SourceText;

/**
 * Whether a text could be run as it is, for a console that must decide what the Enter key does.
 *
 * @param indent spaces with which the next line begins, where one is wanted
 */
public record Completeness(State state, String indent) {
    /** What there is to say about a text. */
    public enum State {
        COMPLETE,
        /** More must follow: a bracket is open, a value is wanted. */
        INCOMPLETE,
        /** Nothing that could follow would mend it. */
        INVALID
    }

    private static final Set<String> MORE_MENDS =
            Set.of("missing-closing", "unfinished-statement", "unfinished-property");

    public static Completeness of(SourceText text) {
        ParseResult parsed = RingParser.parse(text);
        List<Diagnostic> errors =
                parsed.diagnostics().stream().filter(Diagnostic::isError).toList();
        if (errors.isEmpty()) {
            return new Completeness(State.COMPLETE, "");
        }
        int depth = 0;
        for (TextWord word : TextWords.of(text)) {
            depth += word.text().equals("{") ? 1 : word.text().equals("}") ? -1 : 0;
        }
        int last = text.text()
                .stripTrailing()
                .codePointCount(0, text.text().stripTrailing().length());
        boolean mendable = errors.stream().allMatch(error -> mends(error, last));
        return mendable
                ? new Completeness(State.INCOMPLETE, Layout.INDENT.repeat(Math.max(0, depth)))
                : new Completeness(State.INVALID, "");
    }

    private static boolean mends(Diagnostic error, int last) {
        Place place = error.place();
        if (place == null || !MORE_MENDS.contains(error.code())) {
            return false;
        }
        return error.code().equals("missing-closing")
                ? error.labels().stream().anyMatch(label -> label.place().span().end() >= last)
                : place.span().end() >= last;
    }
}
