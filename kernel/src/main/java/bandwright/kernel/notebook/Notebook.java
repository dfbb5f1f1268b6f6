// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.notebook;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/**
 * A notebook. Immutable. It keeps the whole tree of its file, so what we do not know (metadata of other programs) comes
 * out as it went in. Always in format 4.5: an older one is completed when read.
 */
public final class Notebook implements Reading {
    private final ObjectNode tree;
    private final List<NotebookCell> cells;
    private final @Nullable String textName;

    /**
     * @param tree complete, see {@link NotebookTree}
     * @param textName the file's name where the whole notebook is one text
     */
    Notebook(ObjectNode tree, @Nullable String textName) {
        this.tree = tree;
        this.cells = NotebookTree.cells(tree);
        this.textName = textName;
    }

    public List<NotebookCell> cells() {
        return cells;
    }

    /** Whether it was read from a {@code .ring} file, and so is one cell of text. */
    public boolean isOneText() {
        return textName != null;
    }

    /** How messages call the cell that runs as the {@code number}th, from 1: {@code cell 3}, or the text's file name. */
    public String cellName(int number) {
        return textName != null ? textName : "cell " + number;
    }

    /**
     * The notebook with other cells: those it knows by their ids keep whatever else the file has on them, but for outputs of a
     * text that was changed.
     */
    public Notebook withCells(List<NotebookCell> changed) {
        ObjectNode copy = tree.deepCopy();
        Map<String, ObjectNode> known = new LinkedHashMap<>();
        for (JsonNode cell : copy.path("cells")) {
            known.put(cell.path("id").asText(), (ObjectNode) cell);
        }
        Map<String, NotebookCell> before = new LinkedHashMap<>();
        cells.forEach(cell -> before.put(cell.id(), cell));
        ArrayNode list = copy.putArray("cells");
        for (NotebookCell cell : changed) {
            ObjectNode node = known.getOrDefault(cell.id(), JsonNodeFactory.instance.objectNode());
            NotebookCell old = before.get(cell.id());
            node.put("cell_type", cell.kind().word()).put("id", cell.id());
            node.set("source", OutputJson.lines(cell.source()));
            boolean same =
                    old != null && old.kind() == cell.kind() && old.source().equals(cell.source());
            if (!same || cell.kind() != CellKind.CODE) {
                node.remove(List.of("outputs", "execution_count"));
            }
            list.add(node);
        }
        NotebookTree.complete(copy);
        return new Notebook(copy, textName);
    }

    /** The notebook with what running left behind, by cell id; cells not named keep what they had. */
    public Notebook withResults(Map<String, CellResult> results) {
        ObjectNode copy = tree.deepCopy();
        for (JsonNode cell : copy.path("cells")) {
            CellResult result = results.get(cell.path("id").asText());
            if (result != null && cell instanceof ObjectNode node) {
                ArrayNode outputs = node.putArray("outputs");
                node.put("execution_count", result.executionCount());
                result.outputs().forEach(output -> outputs.add(OutputJson.of(output)));
            }
        }
        return new Notebook(copy, textName);
    }

    /** The notebook as if no cell had ever run. */
    public Notebook withoutResults() {
        return withoutResults(cells.stream().map(NotebookCell::id).collect(Collectors.toSet()));
    }

    /** The notebook with nothing left of what running some cells, by their ids, once showed. */
    public Notebook withoutResults(Set<String> ids) {
        ObjectNode copy = tree.deepCopy();
        for (JsonNode cell : copy.path("cells")) {
            if (ids.contains(cell.path("id").asText()) && cell instanceof ObjectNode node) {
                node.remove(List.of("outputs", "execution_count"));
            }
        }
        NotebookTree.complete(copy);
        return new Notebook(copy, textName);
    }

    /** The notebook without the cells that have any of some tags. */
    public Notebook without(Set<String> tags) {
        Set<String> gone = cells.stream()
                .filter(cell -> cell.tags().stream()
                        .map(tag -> tag.strip().toLowerCase(Locale.ROOT))
                        .anyMatch(tags::contains))
                .map(NotebookCell::id)
                .collect(Collectors.toSet());
        ObjectNode copy = tree.deepCopy();
        ArrayNode kept = copy.putArray("cells");
        for (JsonNode cell : tree.path("cells")) {
            if (!gone.contains(cell.path("id").asText())) {
                kept.add(cell.deepCopy());
            }
        }
        return new Notebook(copy, textName);
    }

    /** The file's text, as Jupyter writes it: keys in order, one space of indent, a line feed at the end. */
    public String json() {
        return JsonText.asJupyter(tree);
    }
}
