// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Iterator;
import java.util.List;
import java.util.Map;

/**
 * JSON (RFC 8259) without a space too many. A tree is made of maps, lists, texts, whole numbers, truth values and {@link #number numbers}. What
 * has a meaning in HTML is escaped, so that the text can stand inside of a page; decimals look the same on every Java.
 */
public final class Json {
    private static final MathContext NINE_DIGITS = new MathContext(9);

    private Json() {}

    /** A number in nine digits. */
    public static BigDecimal number(double value) {
        return tidy(new BigDecimal(value).round(NINE_DIGITS));
    }

    /** A number in all the digits that it has. */
    public static BigDecimal exact(float value) {
        return tidy(new BigDecimal((double) value));
    }

    private static BigDecimal tidy(BigDecimal value) {
        return value.signum() == 0 ? BigDecimal.ZERO : value.stripTrailingZeros();
    }

    public static String write(Object tree) {
        StringBuilder text = new StringBuilder();
        write(tree, text);
        return text.toString();
    }

    private static void write(Object node, StringBuilder text) {
        if (node instanceof Map<?, ?> map) {
            text.append('{');
            for (Iterator<? extends Map.Entry<?, ?>> entries = map.entrySet().iterator(); entries.hasNext(); ) {
                Map.Entry<?, ?> entry = entries.next();
                string((String) entry.getKey(), text);
                text.append(':');
                write(entry.getValue(), text);
                text.append(entries.hasNext() ? "," : "");
            }
            text.append('}');
        } else if (node instanceof List<?> list) {
            text.append('[');
            for (Iterator<?> items = list.iterator(); items.hasNext(); ) {
                write(items.next(), text);
                text.append(items.hasNext() ? "," : "");
            }
            text.append(']');
        } else if (node instanceof String string) {
            string(string, text);
        } else if (node instanceof BigDecimal number) {
            text.append(number.toPlainString());
        } else if (node instanceof Integer || node instanceof Boolean) {
            text.append(node);
        } else {
            throw new IllegalArgumentException("Not a part of a JSON tree: " + node.getClass());
        }
    }

    private static void string(String value, StringBuilder text) {
        text.append('"');
        for (int at = 0; at < value.length(); at++) {
            char character = value.charAt(at);
            boolean escaped = character < ' '
                    || character == '<'
                    || character == '>'
                    || character == '&'
                    || character == '\u2028'
                    || character == '\u2029'
                    || Character.isSurrogate(character);
            if (character == '"' || character == '\\') {
                text.append('\\').append(character);
            } else if (escaped) {
                String digits = Integer.toHexString(character);
                text.append("\\u").append("0".repeat(4 - digits.length())).append(digits);
            } else {
                text.append(character);
            }
        }
        text.append('"');
    }
}
