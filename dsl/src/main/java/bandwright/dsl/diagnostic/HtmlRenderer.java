// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.diagnostic;

import java.util.List;

import org.jspecify.annotations.Nullable;

/** A diagnostic as plain HTML without styles or scripts; all text of people is escaped. */
public final class HtmlRenderer {
    private HtmlRenderer() {}

    public static String render(List<Diagnostic> diagnostics) {
        return String.join("", diagnostics.stream().map(HtmlRenderer::render).toList());
    }

    public static String render(Diagnostic diagnostic) {
        StringBuilder html = new StringBuilder("<div>\n<p><strong>")
                .append(escape(diagnostic.severity().word() + " " + diagnostic.code()))
                .append("</strong>: ")
                .append(escape(diagnostic.message()))
                .append("</p>\n");
        String excerpt = PlainRenderer.excerpt(diagnostic);
        if (!excerpt.isEmpty()) {
            html.append("<pre>").append(escape(excerpt)).append("</pre>\n");
        }
        Suggestion suggestion = diagnostic.suggestion();
        field(html, "found", diagnostic.found());
        field(html, "expected", diagnostic.expected());
        if (suggestion != null) {
            html.append("<p>try <code>").append(escape(suggestion.shown())).append("</code></p>\n");
        }
        field(html, "advice", diagnostic.advice());
        return html.append("</div>\n").toString();
    }

    private static void field(StringBuilder html, String name, @Nullable String value) {
        if (value != null) {
            html.append("<p>").append(name).append(' ').append(escape(value)).append("</p>\n");
        }
    }

    private static String escape(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replace("'", "&#39;");
    }
}
