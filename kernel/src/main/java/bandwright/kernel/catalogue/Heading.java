// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.catalogue;

import java.nio.charset.StandardCharsets;
import java.util.List;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

import bandwright.dsl.Sweep;
import bandwright.dsl.view.Table;

/**
 * All that decides what stands in a catalogue. Two with equal headings hold the same rows.
 *
 * @param engine the program and its version
 * @param design fingerprint of the design as it stands
 * @param text SHA-256 of the text that the design was read from
 */
public record Heading(String engine, String design, String text, Plan plan) {
    private static final JsonMapper MAPPER = new JsonMapper();
    private static final DefaultPrettyPrinter PRINTER = printer();

    private static DefaultPrettyPrinter printer() {
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
        printer.indentObjectsWith(indenter);
        printer.indentArraysWith(indenter);
        return printer;
    }

    /** The side file of a catalogue that is under way, and of one that is many files. */
    public byte[] begun(Sweep sweep) {
        return bytes(tree(sweep));
    }

    /** The side file of a whole catalogue. */
    byte[] finished(Sweep sweep, String csvSha256) {
        ObjectNode tree = tree(sweep);
        tree.put("csv_sha256", csvSha256);
        return bytes(tree);
    }

    private ObjectNode tree(Sweep sweep) {
        ObjectNode tree = MAPPER.createObjectNode();
        tree.put("engine", engine);
        tree.put("design_fingerprint", design);
        tree.put("text_sha256", text);
        ObjectNode planned = tree.putObject("plan");
        ObjectNode over = planned.putObject("over");
        plan.over().forEach(handle -> over.put(handle.name(), handle.range()));
        texts(planned.putArray("measure"), plan.measures());
        tree.put("rows", sweep.rows());
        ArrayNode columns = tree.putArray("columns");
        for (Table.Column column : sweep.columns()) {
            columns.addObject().put("name", column.name()).put("unit", column.unit());
        }
        texts(tree.putArray("requirements"), sweep.requirements());
        return tree;
    }

    private static void texts(ArrayNode array, List<String> texts) {
        texts.forEach(array::add);
    }

    private static byte[] bytes(ObjectNode tree) {
        try {
            return (MAPPER.writer(PRINTER).writeValueAsString(tree) + "\n").getBytes(StandardCharsets.UTF_8);
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException("a tree of texts is always JSON", impossible);
        }
    }
}
