// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.app;

import java.util.Locale;
import java.util.stream.Collectors;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

import bandwright.dsl.view.Contrast;
import bandwright.dsl.view.Table;
import bandwright.kernel.notebook.JsonText;

/** How {@code compare} writes what it found. */
enum CompareFormat {
    TEXT {
        @Override
        String write(Contrast contrast) {
            return contrast.tables().stream().map(Table::plainText).collect(Collectors.joining("\n")) + "\n"
                    + contrast.left() + " and " + contrast.right() + ": " + contrast.summary() + "\n";
        }
    },
    JSON {
        @Override
        String write(Contrast contrast) {
            ObjectNode root = JsonNodeFactory.instance.objectNode();
            root.put("left", contrast.left()).put("right", contrast.right()).put("same", contrast.same());
            var lines = root.putArray("lines");
            contrast.lines()
                    .forEach(line -> lines.addObject()
                            .put("group", line.group().word())
                            .put("name", line.name())
                            .put("left", line.left())
                            .put("right", line.right())
                            .put("difference", line.difference())
                            .put("percent", line.percent())
                            .put("same", line.same()));
            return JsonText.inOrder(root);
        }
    },
    CSV {
        @Override
        String write(Contrast contrast) {
            return contrast.inOneTable().csv();
        }
    };

    /** The whole text, ending with a line feed. */
    abstract String write(Contrast contrast);

    /** The word on the command line. */
    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }
}
