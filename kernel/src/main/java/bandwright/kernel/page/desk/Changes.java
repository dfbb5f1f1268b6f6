// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.desk;

import java.util.HashSet;
import java.util.Set;

import org.jspecify.annotations.Nullable;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

import bandwright.kernel.notebook.CellKind;

/** What a page does to a notebook's cells. */
final class Changes {
    private Changes() {}

    /** Makes changes in their order; together they are one step to be taken back. */
    static ObjectNode make(OpenNotebook notebook, JsonNode changes) throws DeskFault {
        ArrayNode others = JsonNodeFactory.instance.arrayNode();
        String made = null;
        Past.Moment before = notebook.moment();
        try {
            for (JsonNode change : changes) {
                String id = change.path("id").asText();
                switch (change.path("do").asText()) {
                    case "type" -> {
                        Set<String> known = new HashSet<>();
                        change.path("known").forEach(text -> known.add(text.asText()));
                        String other =
                                notebook.type(id, known, change.path("source").asText());
                        if (other != null) {
                            others.add(other);
                        }
                    }
                    case "insert" ->
                        made = notebook.insert(
                                kind(change), change.path("source").asText(), optional(change.path("after")));
                    case "remove" -> notebook.remove(id);
                    case "move" -> notebook.move(id, change.path("by").asInt());
                    case "turn" -> notebook.turnInto(id, kind(change));
                    case "clear" -> notebook.clear();
                    default -> throw new DeskFault("there is no such change");
                }
            }
        } finally {
            // What was done before a fault is done.
            boolean typed =
                    changes.size() == 1 && changes.get(0).path("do").asText().equals("type");
            notebook.changed(before, typed ? changes.get(0).path("id").asText() : null);
        }
        ObjectNode state = DeskJson.state(notebook);
        state.set("conflicts", others);
        if (made != null) {
            state.put("made", made);
        }
        return state;
    }

    static @Nullable String optional(JsonNode node) {
        return node.isTextual() ? node.asText() : null;
    }

    private static CellKind kind(JsonNode change) throws DeskFault {
        return switch (change.path("kind").asText()) {
            case "code" -> CellKind.CODE;
            case "markdown" -> CellKind.MARKDOWN;
            case "raw" -> CellKind.RAW;
            default -> throw new DeskFault("there is no such kind of cell");
        };
    }
}
