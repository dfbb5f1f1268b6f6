// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.export;

/** Text in HTML that is well-formed XML too. */
final class Html {
    private static final int REPLACEMENT = 0xFFFD;

    private Html() {}

    /** Text as content or as a quoted attribute. */
    static String escape(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }

    /** The text without the characters no document may hold, such as control characters and halves of pairs. */
    static String legal(String text) {
        StringBuilder legal = new StringBuilder(text.length());
        text.codePoints().map(point -> isLegal(point) ? point : REPLACEMENT).forEach(legal::appendCodePoint);
        return legal.toString();
    }

    private static boolean isLegal(int point) {
        boolean whiteSpace = point == '\t' || point == '\n' || point == '\r';
        boolean control = point < 0x20 || (point >= 0x7F && point < 0xA0);
        boolean surrogate = point >= Character.MIN_SURROGATE && point <= Character.MAX_SURROGATE;
        boolean nonCharacter = (point & 0xFFFE) == 0xFFFE || (point >= 0xFDD0 && point <= 0xFDEF);
        return whiteSpace || !(control || surrogate || nonCharacter);
    }

    /** A table or drawing that may be wider than the page: it scrolls by itself, also from the keyboard. */
    static String frame(String name, String content) {
        return "<div class=\"frame\" role=\"region\" aria-label=\"" + escape(name) + "\" tabindex=\"0\">\n" + content
                + "</div>\n";
    }

    /** Lets the keyboard reach excerpts that are wider than the page. */
    static String scrolling(String html) {
        return html.replace("<pre>", "<pre tabindex=\"0\">");
    }
}
