// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.notebook;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;

import org.jspecify.annotations.Nullable;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;

/**
 * Reads {@code .ipynb} files of format 4.0 to 4.5 in our language, and {@code .ring} texts as a notebook of one cell. Files
 * are UTF-8 and at most 20 MB.
 */
public final class NotebookReader {
    private static final ObjectMapper MAPPER = JsonMapper.builder()
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
            .build();

    private NotebookReader() {}

    /** Reads a file; what is wrong with it is an answer too. */
    public static Reading read(Path file) {
        TextFile text = TextFile.read(file);
        String fault = text.fault();
        if (fault != null) {
            return new NotebookFault(fault);
        }
        String name = file.getFileName() == null
                ? file.toString()
                : file.getFileName().toString();
        String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
        if (ending.equals("ring")) {
            return new Notebook(NotebookTree.ofText(text.text()), name);
        }
        if (!ending.equals("ipynb")) {
            return new NotebookFault(file + " ends neither in .ipynb nor in .ring");
        }
        return parse(file.toString(), text.text());
    }

    /** A notebook of one cell. */
    public static Notebook ofText(String text) {
        return new Notebook(NotebookTree.ofText(text), null);
    }

    /**
     * Reads a notebook's text.
     *
     * @param name how messages call it
     */
    public static Reading parse(String name, String json) {
        JsonNode tree;
        try {
            tree = MAPPER.readTree(json);
        } catch (JsonProcessingException failure) {
            return new NotebookFault(name + " is not valid JSON" + where(failure.getLocation()));
        }
        if (!(tree instanceof ObjectNode notebook)) {
            return new NotebookFault(name + " is JSON, but no notebook");
        }
        Optional<String> fault = shapeFault(notebook)
                .or(() -> cellFault(notebook))
                .or(() -> languageFault(notebook))
                .map(words -> name + " " + words);
        if (fault.isPresent()) {
            return new NotebookFault(fault.get());
        }
        NotebookTree.complete(notebook);
        return new Notebook(notebook, null);
    }

    private static String where(@Nullable JsonLocation location) {
        return location == null ? "" : ": line " + location.getLineNr() + ", column " + location.getColumnNr();
    }

    private static Optional<String> shapeFault(ObjectNode notebook) {
        JsonNode format = notebook.path("nbformat");
        if (!format.isInt()) {
            return Optional.of("is JSON, but no notebook: it has no number nbformat");
        }
        int minor = notebook.path("nbformat_minor").asInt(0);
        if (format.intValue() != 4 || minor < 0 || minor > 5) {
            return Optional.of("is a notebook of format " + format.intValue() + "." + minor
                    + "; formats 4.0 to 4.5 can be read (another notebook program can convert it)");
        }
        return notebook.path("cells").isArray()
                ? Optional.empty()
                : Optional.of("is JSON, but no notebook: it has no list of cells");
    }

    private static Optional<String> cellFault(ObjectNode notebook) {
        int number = 0;
        for (JsonNode cell : notebook.path("cells")) {
            number++;
            boolean kindKnown = CellKind.of(cell.path("cell_type").asText()).isPresent();
            if (!cell.isObject() || !kindKnown || !NotebookTree.isText(cell.path("source"))) {
                return Optional.of("is no notebook: entry " + number + " of its cells is no cell");
            }
        }
        return Optional.empty();
    }

    /** The language a notebook names decides; where it names none, its kernel does. */
    private static Optional<String> languageFault(ObjectNode notebook) {
        JsonNode metadata = notebook.path("metadata");
        JsonNode kernel = metadata.path("kernelspec");
        String language = metadata.path("language_info").path("name").asText("");
        String named = language.isEmpty() ? kernel.path("language").asText("") : language;
        String decisive = named.isEmpty() ? kernel.path("name").asText("") : named;
        return decisive.isEmpty() || decisive.equals(NotebookTree.LANGUAGE)
                ? Optional.empty()
                : Optional.of("is a notebook of another language: " + decisive);
    }
}
