// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.export;

/** Texts within XML 1.0. */
public final class XmlText {
    private XmlText() {}

    /** For an attribute in double quotes or between tags; signs that XML cannot hold become U+FFFD. */
    public static String escaped(String text) {
        StringBuilder escaped = new StringBuilder();
        text.codePoints().forEach(point -> {
            switch (point) {
                case '&' -> escaped.append("&amp;");
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                case '"' -> escaped.append("&quot;");
                default -> escaped.appendCodePoint(isAllowed(point) ? point : 0xfffd);
            }
        });
        return escaped.toString();
    }

    private static boolean isAllowed(int point) {
        return (point >= 0x20 && point <= 0xd7ff) || (point >= 0xe000 && point != 0xfffe && point != 0xffff);
    }
}
