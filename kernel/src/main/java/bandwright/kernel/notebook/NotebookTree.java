// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.notebook;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** The JSON of a notebook: what must be there in format 4.5 is put where it is missing, all else stays. */
final class NotebookTree {
    static final String LANGUAGE = "bandwright";

    private static final Pattern GOOD_ID = Pattern.compile("[a-zA-Z0-9_-]{1,64}");
    private static final Pattern BASE64 = Pattern.compile("[A-Za-z0-9+/=\\s]+");
    private static final List<String> PICTURE_TYPES = List.of("image/png", "image/jpeg", "image/gif");

    private NotebookTree() {}

    /** A notebook of one code cell. */
    static ObjectNode ofText(String text) {
        ObjectNode tree = JsonNodeFactory.instance.objectNode();
        tree.putArray("cells").addObject().put("cell_type", "code").set("source", OutputJson.lines(text));
        complete(tree);
        return tree;
    }

    /** Puts in what format 4.5 asks for. Ids made here depend on the cell's position alone. */
    static void complete(ObjectNode tree) {
        tree.put("nbformat", 4).put("nbformat_minor", 5);
        ObjectNode metadata = objectAt(tree, "metadata");
        if (!metadata.has("kernelspec")) {
            metadata.putObject("kernelspec")
                    .put("display_name", "Bandwright")
                    .put("language", LANGUAGE)
                    .put("name", LANGUAGE);
        }
        if (!metadata.has("language_info")) {
            metadata.putObject("language_info").put("file_extension", ".ring").put("name", LANGUAGE);
        }
        Set<String> taken = new HashSet<>();
        for (JsonNode cell : tree.path("cells")) {
            taken.add(cell.path("id").asText());
        }
        Set<String> used = new HashSet<>();
        int number = 0;
        for (JsonNode cell : tree.path("cells")) {
            number++;
            completeCell((ObjectNode) cell, number, taken, used);
        }
    }

    private static void completeCell(ObjectNode cell, int number, Set<String> taken, Set<String> used) {
        String id = cell.path("id").asText();
        if (!cell.path("id").isTextual() || !GOOD_ID.matcher(id).matches() || used.contains(id)) {
            id = "cell-" + number;
            while (taken.contains(id) || used.contains(id)) {
                id += "-a";
            }
            cell.put("id", id);
        }
        used.add(id);
        objectAt(cell, "metadata");
        cell.set("source", OutputJson.lines(text(cell.path("source"))));
        if (cell.path("cell_type").asText().equals(CellKind.CODE.word())) {
            if (!cell.path("outputs").isArray()) {
                cell.putArray("outputs");
            }
            if (!cell.path("execution_count").isIntegralNumber()) {
                cell.putNull("execution_count");
            }
        }
    }

    private static ObjectNode objectAt(ObjectNode node, String key) {
        return node.path(key) instanceof ObjectNode present ? present : node.putObject(key);
    }

    /** The cells of a complete tree. */
    static List<NotebookCell> cells(ObjectNode tree) {
        List<NotebookCell> cells = new ArrayList<>();
        for (JsonNode cell : tree.path("cells")) {
            CellKind kind = CellKind.of(cell.path("cell_type").asText()).orElseThrow();
            Set<String> tags = new LinkedHashSet<>();
            cell.path("metadata").path("tags").forEach(tag -> tags.add(tag.asText()));
            cells.add(new NotebookCell(
                    cell.path("id").asText(), kind, text(cell.path("source")), tags, attachments(cell)));
        }
        return List.copyOf(cells);
    }

    /** A text kept as one string or as a list of lines. */
    static String text(JsonNode node) {
        if (!node.isArray()) {
            return node.asText();
        }
        StringBuilder text = new StringBuilder();
        node.forEach(line -> text.append(line.asText()));
        return text.toString();
    }

    /** Only pixels: other kinds of attachment could carry more than a picture. */
    private static Map<String, String> attachments(JsonNode cell) {
        Map<String, String> attachments = new LinkedHashMap<>();
        cell.path("attachments").properties().forEach(entry -> {
            for (String type : PICTURE_TYPES) {
                String data = text(entry.getValue().path(type));
                if (BASE64.matcher(data).matches()) {
                    attachments.putIfAbsent(entry.getKey(), "data:" + type + ";base64," + data.replaceAll("\\s", ""));
                }
            }
        });
        return attachments;
    }

    /** Whether each entry of a list is a text. */
    static boolean isText(JsonNode node) {
        if (node instanceof ArrayNode lines) {
            for (JsonNode line : lines) {
                if (!line.isTextual()) {
                    return false;
                }
            }
            return true;
        }
        return node.isTextual();
    }
}
