// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.desk;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.jspecify.annotations.Nullable;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

import bandwright.kernel.notebook.CellKind;
import bandwright.kernel.notebook.NotebookCell;

/** A notebook's past as it is kept on the disk, with the mark of the file that it is the past of. */
final class PastJson {
    private static final ObjectMapper JSON = new ObjectMapper();

    private PastJson() {}

    /**
     * What was kept.
     *
     * @param disk the mark of the file's text as the desk knew it last
     */
    record Kept(String disk, Past past) {}

    /** Tells one text from another: SHA-256. */
    static String mark(String text) {
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException missing) {
            throw new IllegalStateException(missing);
        }
    }

    static String write(Past past, String disk) {
        ObjectNode node = JsonNodeFactory.instance.objectNode().put("disk", disk);
        past.back().forEach(new Steps(node.putArray("back"))::add);
        past.again().forEach(new Steps(node.putArray("again"))::add);
        return node.toString();
    }

    /** Nothing if this is no past. */
    static @Nullable Kept read(String text) {
        try {
            JsonNode node = JSON.readTree(text);
            return new Kept(node.path("disk").asText(), new Past(steps(node.path("back")), steps(node.path("again"))));
        } catch (JsonProcessingException | IllegalArgumentException damaged) {
            return null;
        }
    }

    private record Steps(ArrayNode list) {
        void add(Past.Step step) {
            ObjectNode node = list.addObject();
            List<String> order = step.order();
            if (order != null) {
                order.forEach(node.putArray("order")::add);
            }
            Set<String> silent = step.silent();
            if (silent != null) {
                silent.stream().sorted().forEach(node.putArray("silent")::add);
            }
            ArrayNode cells = node.putArray("cells");
            step.cells().forEach(cell -> add(cells.addObject(), cell));
        }

        private static void add(ObjectNode node, NotebookCell cell) {
            node.put("id", cell.id()).put("kind", cell.kind().name()).put("source", cell.source());
            cell.tags().stream().sorted().forEach(node.putArray("tags")::add);
            ObjectNode attachments = node.putObject("attachments");
            cell.attachments().forEach(attachments::put);
        }
    }

    private static List<Past.Step> steps(JsonNode list) {
        List<Past.Step> steps = new ArrayList<>();
        for (JsonNode node : list) {
            List<NotebookCell> cells = new ArrayList<>();
            node.path("cells").forEach(cell -> cells.add(cell(cell)));
            Set<String> silent = node.has("silent") ? new LinkedHashSet<>(words(node.path("silent"))) : null;
            steps.add(new Past.Step(node.has("order") ? words(node.path("order")) : null, cells, silent));
        }
        return steps;
    }

    private static NotebookCell cell(JsonNode node) {
        Map<String, String> attachments = new LinkedHashMap<>();
        node.path("attachments")
                .properties()
                .forEach(each -> attachments.put(each.getKey(), each.getValue().asText()));
        return new NotebookCell(
                node.path("id").asText(),
                CellKind.valueOf(node.path("kind").asText()),
                node.path("source").asText(),
                new LinkedHashSet<>(words(node.path("tags"))),
                attachments);
    }

    private static List<String> words(JsonNode list) {
        List<String> words = new ArrayList<>();
        list.forEach(word -> words.add(word.asText()));
        return words;
    }
}
