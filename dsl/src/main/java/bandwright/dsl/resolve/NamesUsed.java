// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.resolve;

import java.lang.reflect.RecordComponent;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

import bandwright.dsl.syntax.Argument;
import bandwright.dsl.syntax.Expression;
import bandwright.dsl.syntax.GrooveProperty;
import bandwright.dsl.syntax.MetalProperty;
import bandwright.dsl.syntax.Name;
import bandwright.dsl.syntax.Node;
import bandwright.dsl.syntax.ProfileShape;
import bandwright.dsl.syntax.Statement;

/** The names a piece of text refers to; read off the records of the tree themselves, so that it can forget nothing. */
final class NamesUsed {
    private final Set<String> names = new TreeSet<>();

    private NamesUsed() {}

    /** In alphabetical order, without the names it makes itself and without words of the language. */
    static Set<String> in(Node node) {
        NamesUsed used = new NamesUsed();
        used.node(node);
        return used.names;
    }

    private void node(Node node) {
        for (RecordComponent part : node.getClass().getRecordComponents()) {
            if (!isOwnWord(node, part.getName())) {
                value(read(node, part));
            }
        }
    }

    private void value(Object value) {
        if (value instanceof Name name) {
            names.add(name.text());
        } else if (value instanceof Node node) {
            node(node);
        } else if (value instanceof List<?> list) {
            list.forEach(this::value);
        }
    }

    /** Whether a name in that place is one that is made there, or a word of the language. */
    private static boolean isOwnWord(Node node, String part) {
        return switch (part) {
            case "name" -> node instanceof Statement || node instanceof Argument;
            case "function" -> node instanceof Expression.Call;
            case "form" -> node instanceof ProfileShape.Form;
            case "element" -> node instanceof MetalProperty.Share;
            case "part" -> node instanceof GrooveProperty.Keep;
            case "collar" -> node instanceof GrooveProperty.LetInFrom;
            case "pieces" -> node instanceof GrooveProperty.Leaving;
            case "cut" -> true;
            default -> false;
        };
    }

    private static Object read(Node node, RecordComponent part) {
        try {
            Object value = part.getAccessor().invoke(node);
            return value == null ? "" : value;
        } catch (ReflectiveOperationException failure) {
            throw new IllegalStateException("cannot read " + part, failure);
        }
    }
}
