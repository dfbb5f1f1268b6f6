// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.diagnostic;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.source.Place;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.source.Span;

/** What to write instead: an edit of a place, or, without one, a line that shows the way. */
public record Suggestion(@Nullable Place place, String text) {
    /** The first line touched by the edit, as it reads afterwards. */
    public String shown() {
        if (place == null) {
            return text;
        }
        SourceText source = place.source();
        int first = source.line(place.span().start());
        int last = source.line(place.span().end());
        String before =
                source.text(new Span(source.lineStart(first), place.span().start()));
        Span lastLine = source.lineSpan(last);
        String after =
                source.text(new Span(place.span().end(), Math.max(place.span().end(), lastLine.end())));
        return (before + text + after).strip();
    }
}
