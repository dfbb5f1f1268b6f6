// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.export;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A ring text with its comments, strings, statement words and dimensions marked by spans. It looks at the text only, never at
 * its meaning, so that a text with errors is marked as well.
 */
final class CodeMarkup {
    private static final String STATEMENTS =
            "title|profile|band|cut|stone-row|prongs|metal|stone-material|forget|show|view|vary"
                    + "|what-if|option|find|measured|explain|require|limit|quote|export|sheet";
    private static final String UNITS = "(?:mm|cm|inch|um|µm|deg|kg|g|dwt|ozt|ct|pt)(?:\\^[23])?|%|°";
    private static final String NUMBER = "\\d+(?: \\d+/\\d+|/\\d+|\\.\\d+)?[½¼¾]?";

    /** A statement opens at the very start of a line; the same word further in is a property. */
    private static final Pattern PIECE = Pattern.compile(
            "(?<comment>#[^\\r\\n]*)"
                    + "|(?<string>[\"“”„][^\"“”„\\r\\n]*[\"“”„]?)"
                    + "|(?<word>^(?:" + STATEMENTS + ")(?![\\p{L}\\p{N}-]))"
                    + "|(?<number>(?<![\\p{L}\\p{N}.-])(?:(?:US|UK|ISO|JP|CH|DE) (?:[A-Z](?![\\p{L}\\p{N}])(?: \\d/\\d)?|"
                    + NUMBER
                    + ")|" + NUMBER + "(?: ?(?:" + UNITS + ")(?![\\p{L}\\p{N}])(?:/(?:" + UNITS
                    + ")(?![\\p{L}\\p{N}]))?)?))",
            Pattern.MULTILINE);

    private static final List<String> KINDS = List.of("comment", "string", "word", "number");

    private CodeMarkup() {}

    static String mark(String code) {
        StringBuilder html = new StringBuilder();
        Matcher matcher = PIECE.matcher(code);
        int done = 0;
        while (matcher.find()) {
            html.append(Html.escape(code.substring(done, matcher.start())));
            html.append("<span class=\"ring-").append(kind(matcher)).append("\">");
            html.append(Html.escape(matcher.group())).append("</span>");
            done = matcher.end();
        }
        return html.append(Html.escape(code.substring(done))).toString();
    }

    private static String kind(Matcher matcher) {
        return KINDS.stream()
                .filter(kind -> matcher.group(kind) != null)
                .findFirst()
                .orElseThrow();
    }
}
