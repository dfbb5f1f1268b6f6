// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

import java.lang.reflect.RecordComponent;
import java.util.List;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.quantity.Unit;
import bandwright.dsl.source.Span;

/**
 * A tree as indented text, spans left out: two trees that say the same have the same text. Meant for tests and for
 * looking at trees; read off the records themselves, so that it can forget nothing.
 */
public final class TreeText {
    private final StringBuilder text = new StringBuilder();

    private TreeText() {}

    public static String of(Node node) {
        TreeText tree = new TreeText();
        tree.node("", "", node);
        return tree.text.toString();
    }

    private void node(String indent, String label, Node node) {
        List<RecordComponent> parts = List.of(node.getClass().getRecordComponents());
        String leaves = parts.stream()
                .map(part -> leaf(part.getName(), value(node, part)))
                .filter(leaf -> !leaf.isEmpty())
                .collect(Collectors.joining(" "));
        text.append(indent)
                .append(label)
                .append(node.getClass().getSimpleName())
                .append(leaves.isEmpty() ? "" : " " + leaves)
                .append('\n');
        for (RecordComponent part : parts) {
            branch(indent + "  ", part.getName(), value(node, part));
        }
    }

    private void branch(String indent, String name, @Nullable Object value) {
        if (value instanceof Node node && !(value instanceof Name)) {
            node(indent, name + ": ", node);
        } else if (value instanceof List<?> list && !isNames(list)) {
            for (Object element : list) {
                branch(indent, name, element);
            }
        }
    }

    private static String leaf(String name, @Nullable Object value) {
        if (value == null || value instanceof Span || (value instanceof Node && !(value instanceof Name))) {
            return "";
        } else if (value instanceof List<?> list) {
            return isNames(list) ? name + "=" + list : "";
        } else if (value instanceof Unit unit) {
            return name + "=" + unit.symbol();
        } else if (value instanceof String string) {
            return name + "=\"" + string + "\"";
        } else {
            return name + "=" + value;
        }
    }

    private static boolean isNames(List<?> list) {
        return !list.isEmpty() && list.get(0) instanceof Name;
    }

    private static @Nullable Object value(Node node, RecordComponent part) {
        try {
            return part.getAccessor().invoke(node);
        } catch (ReflectiveOperationException failure) {
            throw new IllegalStateException("cannot read " + part, failure);
        }
    }
}
