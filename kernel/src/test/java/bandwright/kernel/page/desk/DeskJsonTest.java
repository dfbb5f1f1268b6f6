// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

import static org.assertj.core.api.Assertions.assertThat;

/** What pages are told of places in texts. */
class DeskJsonTest {
    @TempDir
    Path folder;

    private JsonNode told(String... sources) throws IOException, DeskFault {
        ObjectNode notebook =
                JsonNodeFactory.instance.objectNode().put("nbformat", 4).put("nbformat_minor", 5);
        notebook.putObject("metadata");
        for (String source : sources) {
            ObjectNode cell = notebook.withArray("cells")
                    .addObject()
                    .put("cell_type", "code")
                    .put("id", "c" + notebook.path("cells").size())
                    .put("source", source)
                    .putNull("execution_count");
            cell.putObject("metadata");
            cell.putArray("outputs");
        }
        Files.writeString(folder.resolve("it.ipynb"), notebook.toString());
        try (OpenNotebook open = new OpenNotebook("it.ipynb", new NotebookFolder(folder))) {
            return DeskJson.state(open).path("cells");
        }
    }

    @Test
    void a_place_in_the_cell_itself_is_told_and_a_correction_can_be_written_there() throws IOException, DeskFault {
        JsonNode said = told("# \ud83d\udc8d\nwidht = 2 mm\nw = width + 1 mm")
                .get(0)
                .path("told")
                .get(0);
        String source = "# \ud83d\udc8d\nwidht = 2 mm\nw = width + 1 mm";
        assertThat(source.substring(said.path("from").asInt(), said.path("to").asInt()))
                .as("counted as the browser counts, behind a sign of two units")
                .isEqualTo("width");
        assertThat(source.substring(
                        said.path("tryFrom").asInt(), said.path("tryTo").asInt()))
                .isEqualTo("width");
        assertThat(said.path("try").asText()).isEqualTo("widht");
    }

    @Test
    void a_place_in_another_cell_is_none_to_write_at() throws IOException, DeskFault {
        JsonNode said =
                told("w = h + 1 mm", "h = 2 deg\nshow h").get(1).path("told").get(0);
        assertThat(said.path("message").asText()).contains("cannot be added");
        assertThat(said.has("from")).isFalse();
        assertThat(said.has("tryFrom")).isFalse();
    }
}
