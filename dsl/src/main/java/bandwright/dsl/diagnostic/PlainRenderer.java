// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.diagnostic;

import java.util.List;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.source.Place;

/**
 * A diagnostic as plain text:
 *
 * <pre>
 * error unit-mismatch: a length and a weight cannot be added
 *   --&gt; cell 3, line 7, column 13
 * 7 | thickness = breadth + 2 g
 *   |             ^^^^^^^   ^^^ a weight
 *   |             a length, defined in cell 1, line 4
 * expected  two quantities of the same kind
 * try       thickness = breadth + 2 mm
 * </pre>
 */
public final class PlainRenderer {
    private PlainRenderer() {}

    /** All diagnostics, an empty line between them; every line ends with {@code \n}. */
    public static String render(List<Diagnostic> diagnostics) {
        return String.join("\n", diagnostics.stream().map(PlainRenderer::render).toList());
    }

    /** One diagnostic; every line ends with {@code \n}. */
    public static String render(Diagnostic diagnostic) {
        StringBuilder text = new StringBuilder()
                .append(diagnostic.severity().word())
                .append(' ')
                .append(diagnostic.code())
                .append(": ")
                .append(diagnostic.message())
                .append('\n')
                .append(excerpt(diagnostic));
        field(text, "found", diagnostic.found());
        field(text, "expected", diagnostic.expected());
        Suggestion suggestion = diagnostic.suggestion();
        field(text, "try", suggestion == null ? null : suggestion.shown());
        field(text, "advice", diagnostic.advice());
        return text.toString();
    }

    /** The lines concerned with what is underlined; empty where the diagnostic has no place. */
    static String excerpt(Diagnostic diagnostic) {
        Place place = diagnostic.place();
        return place == null ? "" : new Excerpt(place, diagnostic.labels()).toString();
    }

    private static void field(StringBuilder text, String name, @Nullable String value) {
        if (value == null) {
            return;
        }
        String column = name + " ".repeat(10 - name.length());
        text.append(column)
                .append(value.strip().replace("\n", "\n" + " ".repeat(10)))
                .append('\n');
    }
}
