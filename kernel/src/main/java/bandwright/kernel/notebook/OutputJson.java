// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.notebook;

import java.util.Locale;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** Outputs as the file format has them. */
final class OutputJson {
    private OutputJson() {}

    static ObjectNode of(Output output) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        if (output instanceof Output.Display display) {
            node.put("output_type", "display_data").putObject("metadata");
            ObjectNode data = node.putObject("data");
            display.data().forEach((type, text) -> put(data, type, text));
        } else if (output instanceof Output.Stream stream) {
            node.put("output_type", "stream")
                    .put("name", stream.channel().name().toLowerCase(Locale.ROOT))
                    .set("text", lines(stream.text()));
        } else if (output instanceof Output.Failure failure) {
            ArrayNode traceback = node.put("output_type", "error")
                    .put("ename", failure.name())
                    .put("evalue", failure.message())
                    .putArray("traceback");
            failure.traceback().forEach(traceback::add);
        } else {
            throw new IllegalStateException("an output without a form: " + output);
        }
        return node;
    }

    private static void put(ObjectNode data, String type, String text) {
        boolean binary = type.startsWith("image/") && !type.endsWith("+xml");
        if (binary) {
            data.put(type, text);
        } else {
            data.set(type, lines(text));
        }
    }

    /** A text as a list of lines, each with its line feed, as Jupyter stores it: one changed line is one changed line. */
    static ArrayNode lines(String text) {
        ArrayNode lines = JsonNodeFactory.instance.arrayNode();
        int start = 0;
        while (start < text.length()) {
            int end = text.indexOf('\n', start);
            int next = end < 0 ? text.length() : end + 1;
            lines.add(text.substring(start, next));
            start = next;
        }
        return lines;
    }
}
