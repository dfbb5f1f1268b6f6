// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.notebook;

import java.util.ArrayList;
import java.util.List;

import com.fasterxml.jackson.databind.JsonNode;

/**
 * JSON as text, byte for byte predictable. Notebooks are written as Jupyter writes them (keys in order of the alphabet,
 * one space of indent, characters unescaped), so that a file saved by either shows no difference but the true one.
 */
public final class JsonText {
    /** Digits a plain decimal may have; beyond, a foreign number keeps its exponent. */
    private static final int LONGEST_SCALE = 40;

    private final boolean sorted;
    private final int indent;
    private final StringBuilder text = new StringBuilder();

    private JsonText(boolean sorted, int indent) {
        this.sorted = sorted;
        this.indent = indent;
    }

    /** With keys in order of the alphabet and one space of indent; ends with a line feed. */
    public static String asJupyter(JsonNode tree) {
        return new JsonText(true, 1).document(tree);
    }

    /** With keys as they come and two spaces of indent; ends with a line feed. */
    public static String inOrder(JsonNode tree) {
        return new JsonText(false, 2).document(tree);
    }

    private String document(JsonNode tree) {
        value(tree, 0);
        return text.append('\n').toString();
    }

    private void value(JsonNode node, int depth) {
        if (node.isObject()) {
            object(node, depth);
        } else if (node.isArray()) {
            array(node, depth);
        } else if (node.isTextual()) {
            string(node.textValue());
        } else if (node.isBigDecimal()) {
            boolean plain = Math.abs((long) node.decimalValue().scale()) <= LONGEST_SCALE;
            text.append(
                    plain
                            ? node.decimalValue().toPlainString()
                            : node.decimalValue().toString());
        } else {
            text.append(node.asText());
        }
    }

    private void object(JsonNode node, int depth) {
        List<String> keys = new ArrayList<>();
        node.fieldNames().forEachRemaining(keys::add);
        if (sorted) {
            keys.sort(null);
        }
        if (keys.isEmpty()) {
            text.append("{}");
            return;
        }
        text.append('{');
        for (int at = 0; at < keys.size(); at++) {
            newLine(at, depth + 1);
            string(keys.get(at));
            text.append(": ");
            value(node.path(keys.get(at)), depth + 1);
        }
        newLine(0, depth);
        text.append('}');
    }

    private void array(JsonNode node, int depth) {
        if (node.isEmpty()) {
            text.append("[]");
            return;
        }
        text.append('[');
        for (int at = 0; at < node.size(); at++) {
            newLine(at, depth + 1);
            value(node.path(at), depth + 1);
        }
        newLine(0, depth);
        text.append(']');
    }

    private void newLine(int before, int depth) {
        text.append(before == 0 ? "\n" : ",\n").append(" ".repeat(indent * depth));
    }

    private void string(String value) {
        text.append('"');
        value.codePoints().forEach(this::character);
        text.append('"');
    }

    private void character(int point) {
        boolean loneSurrogate = point >= Character.MIN_SURROGATE && point <= Character.MAX_SURROGATE;
        if (point == '"' || point == '\\') {
            text.append('\\').append((char) point);
        } else if (point == '\n') {
            text.append("\\n");
        } else if (point == '\r') {
            text.append("\\r");
        } else if (point == '\t') {
            text.append("\\t");
        } else if (point < ' ' || loneSurrogate) {
            String digits = Integer.toHexString(point);
            text.append("\\u").append("0".repeat(4 - digits.length())).append(digits);
        } else {
            text.appendCodePoint(point);
        }
    }
}
