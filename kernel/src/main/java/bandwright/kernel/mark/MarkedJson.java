// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.mark;

import java.util.ArrayList;
import java.util.List;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** What a process that marks says to the one that started it. */
public final class MarkedJson {
    private MarkedJson() {}

    public static String write(Marked marked) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("failure", marked.failure()).put("title", marked.title());
        judgements(node.putArray("key"), marked.key());
        judgements(node.putArray("own"), marked.own());
        ArrayNode troubles = node.putArray("troubles");
        marked.troubles().forEach(troubles::add);
        return node.put("errors", marked.errors())
                .put("java", marked.javaCells())
                .toString();
    }

    private static void judgements(ArrayNode array, List<Judgement> judgements) {
        judgements.forEach(judgement -> array.addObject()
                .put("condition", judgement.condition())
                .put("passed", judgement.passed())
                .put("says", judgement.says()));
    }

    /** @throws JsonProcessingException if it is none of ours */
    static Marked read(String json) throws JsonProcessingException {
        JsonNode node = JsonMapper.builder().build().readTree(json);
        List<String> troubles = new ArrayList<>();
        node.path("troubles").forEach(trouble -> troubles.add(trouble.asText()));
        return new Marked(
                node.path("failure").asText("the run told nothing"),
                node.path("title").asText(""),
                judgements(node.path("key")),
                judgements(node.path("own")),
                troubles,
                node.path("errors").asInt(),
                node.path("java").asInt());
    }

    private static List<Judgement> judgements(JsonNode array) {
        List<Judgement> judgements = new ArrayList<>();
        array.forEach(node -> judgements.add(new Judgement(
                node.path("condition").asText(),
                node.path("passed").asBoolean(),
                node.path("says").asText())));
        return judgements;
    }
}
