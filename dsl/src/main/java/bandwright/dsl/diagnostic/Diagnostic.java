// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.diagnostic;

import java.util.ArrayList;
import java.util.List;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.source.Place;

/**
 * Something a person should know about a text.
 *
 * <pre>{@code
 * Diagnostic.error("unit-mismatch", sum)
 *         .with("a length", "a weight")
 *         .label(left, "a length")
 *         .label(right, "a weight")
 *         .suggest(right, "2 mm")
 *         .build();
 * }</pre>
 *
 * @param code what kind of trouble, in kebab-case; its texts are in {@code messages.properties}
 * @param message one sentence without a full stop
 * @param place the least place that shows the fault; none where the fault is in no text
 * @param labels words under places, the primary one included where it needs words
 * @param found what stood there, where that is not plain to see
 * @param expected what would have been right
 * @param suggestion how the text should be
 * @param advice a longer explanation
 */
public record Diagnostic(
        String code,
        Severity severity,
        String message,
        @Nullable Place place,
        List<Label> labels,
        @Nullable String found,
        @Nullable String expected,
        @Nullable Suggestion suggestion,
        @Nullable String advice) {
    public Diagnostic {
        labels = List.copyOf(labels);
    }

    public boolean isError() {
        return severity == Severity.ERROR;
    }

    /** The same, told as a warning where it is an error. */
    public Diagnostic asWarning() {
        return isError()
                ? new Diagnostic(code, Severity.WARNING, message, place, labels, found, expected, suggestion, advice)
                : this;
    }

    public static Builder error(String code, @Nullable Place place) {
        return new Builder(code, Severity.ERROR, place);
    }

    public static Builder warning(String code, @Nullable Place place) {
        return new Builder(code, Severity.WARNING, place);
    }

    public static Builder note(String code, @Nullable Place place) {
        return new Builder(code, Severity.NOTE, place);
    }

    /** The plain text form, see {@link PlainRenderer}. */
    @Override
    public String toString() {
        return PlainRenderer.render(this);
    }

    /** Gathers the parts; texts not given come from {@code messages.properties}. */
    public static final class Builder {
        private final String code;
        private final Severity severity;
        private final @Nullable Place place;
        private final List<Label> labels = new ArrayList<>();
        private List<String> arguments = List.of();
        private @Nullable String found;
        private @Nullable String expected;
        private @Nullable Suggestion suggestion;
        private @Nullable String advice;

        private Builder(String code, Severity severity, @Nullable Place place) {
            this.code = code;
            this.severity = severity;
            this.place = place;
        }

        /** What stands for {@code {0}}, {@code {1}} and so on in the texts. */
        public Builder with(String... arguments) {
            this.arguments = List.of(arguments);
            return this;
        }

        public Builder label(@Nullable Place place, String text) {
            if (place != null) {
                labels.add(new Label(place, text));
            }
            return this;
        }

        public Builder found(@Nullable String found) {
            this.found = found;
            return this;
        }

        public Builder expected(@Nullable String expected) {
            this.expected = expected;
            return this;
        }

        /** Suggests an edit. */
        public Builder suggest(Place place, String replacement) {
            this.suggestion = new Suggestion(place, replacement);
            return this;
        }

        /** Suggests a line to write. */
        public Builder suggestLine(String line) {
            this.suggestion = new Suggestion(null, line);
            return this;
        }

        public Builder advice(@Nullable String advice) {
            this.advice = advice;
            return this;
        }

        public Diagnostic build() {
            return new Diagnostic(
                    code,
                    severity,
                    Messages.message(code, arguments),
                    place,
                    labels,
                    found,
                    expected != null ? expected : Messages.expected(code, arguments),
                    suggestion,
                    advice != null ? advice : Messages.advice(code, arguments));
        }
    }
}
