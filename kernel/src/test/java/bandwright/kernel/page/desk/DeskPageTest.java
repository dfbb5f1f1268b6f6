// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.desk;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

import bandwright.kernel.page.Npm;
import bandwright.kernel.page.server.Events;
import bandwright.kernel.page.server.LocalServer;

import static org.assertj.core.api.Assertions.assertThat;

/** The page in a real browser; its pictures are left in {@code target/desk}: look at them. */
class DeskPageTest {
    private static final String RING = """
            breadth = 4 mm between 3 mm and 8 mm

            profile dome = d-shape(width: breadth, height: 1.8 mm, side: 1.2 mm)

            band shank {
              finger   ISO 54
              profile  dome
              metal    yellow-gold-750
            }
            """;

    @TempDir
    Path folder;

    private final Path pictures = Path.of("target", "desk").toAbsolutePath();

    @BeforeEach
    void need() throws Exception {
        Npm.need();
        Npm.needBrowser();
        Files.createDirectories(pictures);
    }

    private String tried(String script, String... more) throws Exception {
        List<String> links = new CopyOnWriteArrayList<>();
        try (Events events = new Events();
                Desk desk = new Desk(folder, events);
                LocalServer server = LocalServer.start(0, DeskPage.routes(desk), events, links::add)) {
            assertThat(server.port()).isPositive();
            return ran(script, links.get(0), more);
        }
    }

    private static String ran(String script, String first, String... more) throws Exception {
        List<String> command = new ArrayList<>(
                List.of("node", Npm.script(script), Npm.MODULES.toString(), Npm.CHROMIUM.toString(), first));
        command.addAll(List.of(more));
        return Npm.run(command);
    }

    @Test
    void a_newcomer_finds_the_way() throws Exception {
        Files.writeString(folder.resolve("it.ipynb"), Starts.text("a plain band", "it.ipynb"));
        assertThat(tried("desk.js", pictures.toString())).isEqualTo("all is well\n");
        assertThat(Files.readString(folder.resolve("it.ipynb"))).contains("she likes it wide", "from the other page");
    }

    @Test
    void a_teacher_finds_the_way_and_every_state_is_accessible() throws Exception {
        ArrayNode cells = JsonNodeFactory.instance.arrayNode();
        cell(cells, "markdown", "# A plain band\n\nToday: what the breadth of a band does to its weight.");
        cell(cells, "code", RING);
        cell(cells, "markdown", "What will it weigh at 6 mm? Guess first.");
        cell(cells, "code", "show weights");
        cell(cells, "code", "show section");
        ((ObjectNode) cell(cells, "markdown", "Half as much again: only the teacher knows.")
                        .path("metadata"))
                .putArray("tags")
                .add("solution");
        write("class.ipynb", cells);
        assertThat(tried("desk-class.js", pictures.toString())).isEqualTo("all is well\n");
        assertThat(folder.resolve("class.sheet.pdf")).doesNotExist();
        assertThat(folder.resolve("class.handout.pdf")).doesNotExist();
    }

    @Test
    void what_is_typed_outlives_a_program_that_is_killed() throws Exception {
        ArrayNode cells = JsonNodeFactory.instance.arrayNode();
        cell(cells, "code", RING);
        write("it.ipynb", cells);
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        assertThat(ran("desk-killed.js", java, System.getProperty("java.class.path"), folder.toString()))
                .isEqualTo("all is well\n");
    }

    /** Measures; {@code times.txt} beside the pictures goes into {@code docs/performance.md}. */
    @Test
    void a_key_is_followed_by_the_new_weight_also_in_a_notebook_of_300_cells() throws Exception {
        Path demo = Path.of("..", "notebooks", "harbour-light.ipynb");
        Files.copy(demo, folder.resolve("demo.ipynb"));
        ObjectNode large = (ObjectNode) new com.fasterxml.jackson.databind.ObjectMapper().readTree(demo.toFile());
        ArrayNode cells = (ArrayNode) large.path("cells");
        for (int i = 1; i <= 100; i++) {
            cell(cells, "markdown", "## Note " + i + "\n\nWords about *note* " + i + ".");
            cell(cells, "code", "note-" + i + " = breadth + " + i + " mm");
            cell(cells, "code", "show note-" + i);
        }
        Files.writeString(folder.resolve("large.ipynb"), large.toString());
        String said = tried("desk-large.js", "demo.ipynb", "large.ipynb");
        Files.writeString(pictures.resolve("times.txt"), said);
        assertThat(said).endsWith("all is well\n");
    }

    private static ObjectNode cell(ArrayNode cells, String kind, String source) {
        ObjectNode cell = cells.addObject().put("cell_type", kind).put("id", "made-" + cells.size());
        cell.putObject("metadata");
        if (kind.equals("code")) {
            cell.putNull("execution_count").putArray("outputs");
        }
        return cell.put("source", source);
    }

    private void write(String name, ArrayNode cells) throws Exception {
        ObjectNode notebook =
                JsonNodeFactory.instance.objectNode().put("nbformat", 4).put("nbformat_minor", 5);
        notebook.putObject("metadata")
                .putObject("kernelspec")
                .put("name", "bandwright")
                .put("display_name", "Bandwright");
        notebook.set("cells", cells);
        Files.writeString(folder.resolve(name), notebook.toString());
    }
}
