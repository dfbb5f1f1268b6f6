// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.parse;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.antlr.v4.runtime.Token;
import org.jspecify.annotations.Nullable;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.source.Place;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.source.Span;

/** Gathers what is wrong with one text, up to a number nobody reads beyond. */
final class Report {
    private static final int MOST = 200;

    private final SourceText source;
    private final List<Diagnostic> diagnostics = new ArrayList<>();

    Report(SourceText source) {
        this.source = source;
    }

    SourceText source() {
        return source;
    }

    void add(Diagnostic.Builder diagnostic) {
        if (diagnostics.size() < MOST) {
            diagnostics.add(diagnostic.build());
        } else if (diagnostics.size() == MOST) {
            diagnostics.add(Diagnostic.note("too-many-errors", null)
                    .with(Integer.toString(MOST))
                    .build());
        }
    }

    /** Takes back what was said within a stretch: it is told better as a whole. */
    void forgive(Span span) {
        diagnostics.removeIf(told -> {
            Place place = told.place();
            return place != null
                    && place.span().start() >= span.start()
                    && place.span().end() <= span.end();
        });
    }

    /** Whether something between two words is wrong already. */
    boolean hasErrorBetween(Span before, Span after) {
        return diagnostics.stream()
                .filter(Diagnostic::isError)
                .map(Diagnostic::place)
                .anyMatch(place -> place != null
                        && place.span().start() >= before.end()
                        && place.span().end() <= after.start());
    }

    boolean isFull() {
        return diagnostics.size() > MOST;
    }

    Place place(Token token) {
        return source.place(span(token));
    }

    Place place(Token first, Token last) {
        return source.place(span(first).to(span(last)));
    }

    /** The place right after a word. */
    Place after(Token token) {
        int end = span(token).end();
        return source.place(new Span(end, end));
    }

    static Span span(Token token) {
        int start = Math.max(0, token.getStartIndex());
        return new Span(start, Math.max(start, token.getStopIndex() + 1));
    }

    /** All diagnostics in the order of the text; those without a place come last. */
    List<Diagnostic> inOrder() {
        List<Diagnostic> ordered = new ArrayList<>(diagnostics);
        ordered.sort(Comparator.comparingInt(diagnostic -> start(diagnostic.place())));
        return ordered;
    }

    private static int start(@Nullable Place place) {
        return place == null ? Integer.MAX_VALUE : place.span().start();
    }
}
