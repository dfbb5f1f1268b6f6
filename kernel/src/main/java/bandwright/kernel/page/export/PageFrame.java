// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.export;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** What all our pages share: well-formed, self-contained, forbidden to load anything, one sheet of style. */
final class PageFrame {
    static final String STYLE = style();
    private static final String POLICY = "default-src 'none'; img-src data:; style-src 'unsafe-inline'";

    private PageFrame() {}

    /**
     * The whole file.
     *
     * @param title as text, and {@code foot} likewise
     * @param contents as HTML, and {@code main} likewise
     * @param turns whether a model in it is to be turned, for which the page has its one script
     */
    static String of(String title, String contents, String main, String foot, boolean turns) {
        String shown = Html.escape(title);
        return Html.legal("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\" />\n"
                + "<meta http-equiv=\"Content-Security-Policy\" content=\"" + POLICY
                + (turns ? "; script-src " + TurntableScript.SOURCE : "") + "\" />\n"
                + "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\" />\n"
                + "<meta name=\"color-scheme\" content=\"light dark\" />\n"
                + "<title>" + shown + "</title>\n<style>\n" + STYLE + (turns ? TurntableScript.style() : "")
                + "</style>\n</head>\n<body>\n"
                + "<a class=\"skip\" href=\"#sheet\">Skip to the sheet</a>\n"
                + "<header>\n<h1>" + shown + "</h1>\n<div class=\"rule\" aria-hidden=\"true\"></div>\n</header>\n"
                + contents + "<main id=\"sheet\" tabindex=\"-1\">\n" + main + "</main>\n"
                + "<footer>\n<p>" + Html.escape(foot) + "</p>\n</footer>\n"
                + (turns ? "<script>" + TurntableScript.TEXT + "</script>\n" : "")
                + "</body>\n</html>\n");
    }

    private static String style() {
        try (InputStream stream = PageFrame.class.getResourceAsStream("sheet.css")) {
            if (stream == null) {
                throw new IllegalStateException("sheet.css is missing");
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}
