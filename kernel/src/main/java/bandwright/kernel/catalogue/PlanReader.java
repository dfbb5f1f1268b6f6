// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.catalogue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;

/** Reads a plan from JSON: {@code {"over": {"breadth": "3 mm..8 mm step 0.1 mm"}, "measure": ["weight(shank)"]}}. */
public final class PlanReader {
    private static final long MOST_BYTES = 1_000_000;
    private static final Set<String> KEYS = new TreeSet<>(Set.of("over", "measure"));

    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();

    private final Path file;

    private PlanReader(Path file) {
        this.file = file;
    }

    public static Plan read(Path file) throws CatalogueFault {
        try {
            if (Files.size(file) > MOST_BYTES) {
                throw new CatalogueFault(file + " is too large for a plan");
            }
            return new PlanReader(file).plan(MAPPER.readTree(Files.readString(file, StandardCharsets.UTF_8)));
        } catch (JsonProcessingException failure) {
            int line = failure.getLocation() == null ? 1 : failure.getLocation().getLineNr();
            throw new CatalogueFault(file + " is not valid JSON: line " + line, failure);
        } catch (IOException failure) {
            throw new CatalogueFault(file + " cannot be read", failure);
        }
    }

    private Plan plan(JsonNode tree) throws CatalogueFault {
        if (!tree.isObject()) {
            throw fault("is no plan: it must hold over and measure");
        }
        for (Map.Entry<String, JsonNode> entry : tree.properties()) {
            if (!KEYS.contains(entry.getKey())) {
                throw fault("has a key " + entry.getKey() + "; a plan holds " + String.join(" and ", KEYS));
            }
        }
        List<Over> over = new ArrayList<>();
        for (Map.Entry<String, JsonNode> handle : tree.path("over").properties()) {
            over.add(new Over(handle.getKey(), text(handle.getValue(), "over " + handle.getKey())));
        }
        if (over.isEmpty()) {
            throw fault("varies nothing: over must name handles and their ranges");
        }
        List<String> measures = new ArrayList<>();
        JsonNode asked = tree.path("measure");
        if (!asked.isMissingNode() && !asked.isArray()) {
            throw fault("has no list for measure");
        }
        for (JsonNode measure : asked) {
            measures.add(text(measure, "measure"));
        }
        return new Plan(over, measures);
    }

    private String text(JsonNode value, String where) throws CatalogueFault {
        if (!value.isTextual()) {
            throw fault("has no text at " + where);
        }
        return value.textValue().strip();
    }

    private CatalogueFault fault(String words) {
        return new CatalogueFault(file + " " + words);
    }
}
