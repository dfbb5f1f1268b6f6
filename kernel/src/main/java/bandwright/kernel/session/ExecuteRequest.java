// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.session;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import com.fasterxml.jackson.databind.JsonNode;

/**
 * What a client wants executed.
 *
 * @param silent nothing is to be shown, counted or remembered
 * @param stored whether the cell counts and enters the history
 * @param expressions to be worked out afterwards, by the names the client gives them
 * @param stopsOnError whether an error ends what waits behind
 * @param cellId which cell of a notebook it is, if the client tells
 * @param deletedCells cells that are no longer in the notebook
 */
record ExecuteRequest(
        String code,
        boolean silent,
        boolean stored,
        Map<String, String> expressions,
        boolean allowsInput,
        boolean stopsOnError,
        Optional<String> cellId,
        List<String> deletedCells) {

    static ExecuteRequest of(Exchange exchange) throws BadRequest {
        JsonNode content = exchange.content();
        JsonNode metadata = exchange.request().metadata();
        boolean silent = content.path("silent").asBoolean(false);
        Map<String, String> expressions = new LinkedHashMap<>();
        content.path("user_expressions")
                .properties()
                .forEach(entry ->
                        expressions.put(entry.getKey(), entry.getValue().asText()));
        List<String> deleted = new ArrayList<>();
        metadata.path("deletedCells").forEach(cell -> deleted.add(cell.asText()));
        String cellId = metadata.path("cellId").asText("");
        return new ExecuteRequest(
                exchange.text("code"),
                silent,
                !silent && content.path("store_history").asBoolean(true),
                expressions,
                content.path("allow_stdin").asBoolean(false),
                content.path("stop_on_error").asBoolean(true),
                cellId.isEmpty() ? Optional.empty() : Optional.of(cellId),
                deleted);
    }
}
