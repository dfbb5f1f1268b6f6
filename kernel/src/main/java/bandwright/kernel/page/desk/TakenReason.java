// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.desk;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.jspecify.annotations.Nullable;

/** Writes a reason behind a value in a ring text. */
final class TakenReason {
    private static final Pattern REASON = Pattern.compile("[ \\t]*because[ \\t]+[\"“”„][^\"“”„\\r\\n]*[\"“”„]");

    private TakenReason() {}

    /**
     * What stands after a value, with another reason: in the place of the old one, or at the line's end before a comment.
     *
     * @param after all of the text that follows the value
     * @param reason none leaves it as it is
     */
    static String put(String after, @Nullable String reason) {
        if (reason == null || reason.isBlank()) {
            return after;
        }
        String words = reason.strip().replaceAll("[\"“”„\\r\\n]", "'");
        int end = after.indexOf('\n');
        String line = end < 0 ? after : after.substring(0, end);
        String rest = end < 0 ? "" : after.substring(end);
        Matcher old = REASON.matcher(line);
        if (old.find()) {
            line = old.replaceFirst("");
        }
        int comment = line.indexOf('#');
        String code = comment < 0 ? line : line.substring(0, comment);
        String said = comment < 0 ? "" : "   " + line.substring(comment);
        return code.stripTrailing() + "   because \"" + words + "\"" + said + rest;
    }
}
