// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.desk;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;

import bandwright.kernel.page.server.Events;
import bandwright.kernel.page.server.Reply;
import bandwright.kernel.page.server.Request;

import static org.assertj.core.api.Assertions.assertThat;

/** What pages ask the desk, and what stays on the disk. */
class DeskTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    private static final String RING = """
            breadth = 4 mm between 3 mm and 6 mm   because "as ordered"
            profile dome = d-shape(width: breadth, height: 1.8 mm)
            band shank { finger ISO 54  profile dome  metal silver-925 }
            show weights
            """;

    @TempDir
    Path folder;

    private Desk desk;

    @BeforeEach
    void open() throws IOException {
        desk = new Desk(folder, new Events());
    }

    private JsonNode ask(String what, String json) throws IOException {
        Reply reply = reply(what, json);
        assertThat(reply.status())
                .as(new String(reply.body(), StandardCharsets.UTF_8))
                .isEqualTo(200);
        return JSON.readTree(reply.body());
    }

    private Reply reply(String what, String json) {
        return Objects.requireNonNull(desk.routes().get("/desk/" + what))
                .work()
                .apply(new Request(json.replace('\'', '"').getBytes(StandardCharsets.UTF_8), "", ""));
    }

    private String fault(String what, String json) throws IOException {
        Reply reply = reply(what, json);
        assertThat(reply.status()).isEqualTo(409);
        return JSON.readTree(reply.body()).path("fault").asText();
    }

    private JsonNode type(String name, String id, int base, String source) throws IOException {
        String change = JSON.writeValueAsString(source);
        return ask(
                "change",
                "{'name':'" + name + "','changes':[{'do':'type','id':'" + id + "','base':" + base + ",'source':"
                        + change + "}]}");
    }

    private static JsonNode number(JsonNode state, String key) {
        for (JsonNode number : state.path("numbers")) {
            if (number.path("key").asText().equals(key)) {
                return number.path("value");
            }
        }
        throw new AssertionError("no number " + key + " in " + state);
    }

    @Test
    void a_change_is_followed_by_the_numbers_and_marks_what_no_longer_holds() throws IOException {
        Files.writeString(folder.resolve("it.ring"), RING);
        JsonNode state = ask("open", "{'name':'it.ring'}");
        String id = state.path("cells").get(0).path("id").asText();
        assertThat(state.path("cells").get(0).path("stale").asBoolean()).isTrue();
        double before = number(state, "part shank").asDouble();

        JsonNode ran = ask("answer", "{'name':'it.ring','id':'" + id + "'}");
        assertThat(ran.path("html").asText()).contains("shank", "<table");
        assertThat(ran.path("stale").asBoolean()).isFalse();

        JsonNode wider = type("it.ring", id, 0, RING.replace("= 4 mm", "= 5 mm"));
        assertThat(number(wider, "part shank").asDouble()).isGreaterThan(1.2 * before);
        assertThat(wider.path("cells").get(0).path("stale").asBoolean()).isTrue();
        assertThat(wider.path("handles").get(0).path("name").asText()).isEqualTo("breadth");
    }

    @Test
    void an_unfinished_text_says_so_and_leaves_the_ring() throws IOException {
        Files.writeString(folder.resolve("it.ring"), RING);
        String id = ask("open", "{'name':'it.ring'}")
                .path("cells")
                .get(0)
                .path("id")
                .asText();
        JsonNode broken = type("it.ring", id, 0, RING.replace("1.8 mm)", "1.8 mm"));
        assertThat(broken.path("cells")
                        .get(0)
                        .path("told")
                        .get(0)
                        .path("severity")
                        .asText())
                .isEqualTo("error");
        assertThat(number(broken, "part shank").asDouble()).isPositive();
    }

    @Test
    void what_was_typed_outlives_a_desk_that_was_never_closed() throws IOException {
        Files.writeString(folder.resolve("it.ring"), RING);
        String id = ask("open", "{'name':'it.ring'}")
                .path("cells")
                .get(0)
                .path("id")
                .asText();
        type("it.ring", id, 0, RING + "# typed\n");
        assertThat(Files.readString(folder.resolve("it.ring"))).isEqualTo(RING);

        desk = new Desk(folder, new Events());
        JsonNode again = ask("open", "{'name':'it.ring'}");
        assertThat(again.path("recovered").asBoolean()).isTrue();
        assertThat(again.path("cells").get(0).path("source").asText()).endsWith("# typed\n");
        ask("save", "{'name':'it.ring'}");
        assertThat(Files.readString(folder.resolve("it.ring"))).isEqualTo(RING + "# typed\n");
        assertThat(folder.resolve(".it.ring.draft")).doesNotExist();
    }

    @Test
    void two_pages_that_change_one_cell_keep_both_texts() throws IOException {
        ask("new", "{'name':'it.ipynb','start':'a plain band'}");
        String id = ask("open", "{'name':'it.ipynb'}")
                .path("cells")
                .get(0)
                .path("id")
                .asText();
        type("it.ipynb", id, 0, "# one\n");
        JsonNode other = type("it.ipynb", id, 0, "# other\n");
        assertThat(other.path("conflicts")).hasSize(1);
        assertThat(other.path("cells")).hasSize(2);
        assertThat(other.path("cells").get(0).path("source").asText()).isEqualTo("# one\n");
        assertThat(other.path("cells").get(1).path("source").asText()).contains("# other\n");
    }

    @Test
    void a_notebook_keeps_what_other_programs_wrote_into_it() throws IOException {
        ask("new", "{'name':'it.ipynb','start':'a plain band'}");
        Path file = folder.resolve("it.ipynb");
        Files.writeString(
                file,
                Files.readString(file).replaceFirst("\"metadata\": \\{\\}", "\"metadata\": {\"theirs\": [1.50]}"));
        String id = ask("open", "{'name':'it.ipynb'}")
                .path("cells")
                .get(0)
                .path("id")
                .asText();
        ask(
                "change",
                "{'name':'it.ipynb','changes':[{'do':'insert','after':'" + id
                        + "','kind':'markdown','source':'words'}]}");
        ask("change", "{'name':'it.ipynb','changes':[{'do':'move','id':'" + id + "','by':1}]}");
        ask("answer", "{'name':'it.ipynb','id':'" + id + "'}");
        ask("save", "{'name':'it.ipynb'}");
        JsonNode saved = JSON.readTree(Files.readString(file));
        assertThat(saved.path("cells").get(0).path("cell_type").asText()).isEqualTo("markdown");
        assertThat(saved.path("cells").get(0).has("outputs")).isFalse();
        assertThat(saved.path("cells").get(1).path("outputs")).isNotEmpty();
        assertThat(Files.readString(file)).contains("\"theirs\"", "1.50");
    }

    @Test
    void a_handle_is_tried_without_a_trace_and_taken_with_its_reason() throws IOException {
        Files.writeString(folder.resolve("it.ring"), RING);
        JsonNode state = ask("open", "{'name':'it.ring'}");
        double before = number(state, "part shank").asDouble();
        JsonNode tried = ask("try", "{'name':'it.ring','handle':'breadth','value':'5 mm','model':true}");
        assertThat(number(tried, "part shank").asDouble()).isGreaterThan(before);
        assertThat(tried.path("glb").asText()).isNotEmpty();
        assertThat(number(ask("open", "{'name':'it.ring'}"), "part shank").asDouble())
                .isEqualTo(before);

        JsonNode taken =
                ask("take", "{'name':'it.ring','handle':'breadth','value':'5 mm','because':'she likes it wide'}");
        assertThat(taken.path("cells").get(0).path("source").asText())
                .startsWith("breadth = 5 mm between 3 mm and 6 mm   because \"she likes it wide\"\n");
        assertThat(fault("try", "{'name':'it.ring','handle':'breadth','value':'9 mm'}"))
                .isNotEmpty();
    }

    @Test
    void names_lead_nowhere_else() throws IOException {
        Files.createDirectory(folder.resolve("inner"));
        for (String name :
                new String[] {"../it.ring", "/etc/passwd", "inner/it.ring", ".hidden.ring", "it.txt", "", "a\\\\b.ring"
                }) {
            assertThat(fault("open", "{'name':'" + name + "'}")).as(name).isNotEmpty();
            assertThat(fault("new", "{'name':'" + name + "','start':'nothing'}"))
                    .as(name)
                    .isNotEmpty();
        }
        Path outside =
                Files.writeString(Files.createFile(folder.resolve("inner").resolve("outside.ring")), RING);
        Files.createSymbolicLink(folder.resolve("link.ring"), outside);
        assertThat(fault("open", "{'name':'link.ring'}")).contains("link");
        assertThat(ask("files", "{}").path("files")).isEmpty();
    }

    @Test
    void programs_run_when_a_person_says_so() throws IOException {
        Path file = folder.resolve("made-by-java");
        Files.writeString(
                folder.resolve("it.ring"),
                "java\njava.nio.file.Files.writeString(java.nio.file.Path.of(\"" + file + "\"), \"x\");\n");
        JsonNode state = ask("open", "{'name':'it.ring'}");
        String id = state.path("cells").get(0).path("id").asText();
        type("it.ring", id, 0, state.path("cells").get(0).path("source").asText() + "\n");
        assertThat(file).doesNotExist();
        ask("answer", "{'name':'it.ring','id':'" + id + "','person':true}");
        assertThat(file).exists();
    }

    @Test
    void the_editor_is_helped_by_the_language() throws IOException {
        Files.writeString(folder.resolve("it.ring"), RING);
        ask("open", "{'name':'it.ring'}");
        JsonNode found = ask("complete", "{'name':'it.ring','source':'show wei','at':8}");
        assertThat(found.path("from").asInt()).isEqualTo(5);
        assertThat(found.path("options").findValuesAsText("label")).contains("weights");
        assertThat(ask("explain", "{'name':'it.ring','source':'show breadth','at':7}")
                        .path("text")
                        .asText())
                .contains("4 mm");
        assertThat(ask("format", "{'source':'show   weights'}").path("source").asText())
                .isEqualTo("show weights");
    }

    @Test
    void what_is_no_json_is_told_so() {
        assertThat(reply("open", "{").status()).isEqualTo(400);
        assertThat(reply("open", "").status()).isIn(400, 409);
        assertThat(reply("change", "[1]").status()).isEqualTo(409);
    }

    @Test
    void files_are_written_when_a_person_says_so() throws IOException {
        Files.writeString(folder.resolve("it.ring"), RING + "export \"marks.csv\" { weights  replace }\n");
        Files.writeString(folder.resolve("marks.csv"), "precious");
        JsonNode state = ask("open", "{'name':'it.ring'}");
        String id = state.path("cells").get(0).path("id").asText();
        assertThat(state.path("cells").get(0).path("acts").asBoolean()).isTrue();
        assertThat(fault("answer", "{'name':'it.ring','id':'" + id + "'}")).contains("when you say so");
        assertThat(folder.resolve("marks.csv")).hasContent("precious");
        ask("answer", "{'name':'it.ring','id':'" + id + "','person':true}");
        assertThat(Files.readString(folder.resolve("marks.csv"))).startsWith("part,");
    }

    @Test
    void a_notebook_that_was_only_looked_at_is_left_alone_and_a_changed_one_is_not_written_over() throws IOException {
        Files.writeString(folder.resolve("seen.ring"), RING);
        Files.writeString(folder.resolve("typed.ring"), RING);
        ask("open", "{'name':'seen.ring'}");
        String id = ask("open", "{'name':'typed.ring'}")
                .path("cells")
                .get(0)
                .path("id")
                .asText();
        type("typed.ring", id, 0, RING + "# mine\n");
        Files.writeString(folder.resolve("seen.ring"), "# theirs\n");
        Files.writeString(folder.resolve("typed.ring"), "# theirs\n");
        desk.close();
        assertThat(folder.resolve("seen.ring")).hasContent("# theirs\n");
        assertThat(folder.resolve("typed.ring")).hasContent("# theirs\n");
        assertThat(Files.readString(folder.resolve("typed-other-1.ring"))).endsWith("# mine\n");
    }

    @Test
    void a_text_that_two_pages_changed_is_kept_in_a_file_of_its_own() throws IOException {
        Files.writeString(folder.resolve("it.ring"), RING);
        String id = ask("open", "{'name':'it.ring'}")
                .path("cells")
                .get(0)
                .path("id")
                .asText();
        type("it.ring", id, 0, RING + "# one\n");
        String change = JSON.writeValueAsString(RING + "# other\n");
        assertThat(fault(
                        "change",
                        "{'name':'it.ring','changes':[{'do':'type','id':'" + id + "','base':0,'source':" + change
                                + "}]}"))
                .contains("it-other-1.ring");
        assertThat(Files.readString(folder.resolve("it-other-1.ring"))).endsWith("# other\n");
    }

    @Test
    void of_two_cells_that_define_a_name_the_later_one_counts_whichever_was_typed_last() throws IOException {
        ask("new", "{'name':'it.ipynb','start':'nothing'}");
        String first = ask("open", "{'name':'it.ipynb'}")
                .path("cells")
                .get(0)
                .path("id")
                .asText();
        String second = ask(
                        "change",
                        "{'name':'it.ipynb','changes':[{'do':'insert','after':'" + first
                                + "','kind':'code','source':'a = 2 mm'}]}")
                .path("made")
                .asText();
        ask(
                "change",
                "{'name':'it.ipynb','changes':[{'do':'insert','after':'" + second
                        + "','kind':'code','source':'show a'}]}");
        JsonNode state = type("it.ipynb", first, 0, "a = 3 mm");
        String third = state.path("cells").get(2).path("id").asText();
        assertThat(ask("answer", "{'name':'it.ipynb','id':'" + third + "'}")
                        .path("html")
                        .asText())
                .contains("a = 2 mm");
        ask("change", "{'name':'it.ipynb','changes':[{'do':'move','id':'" + first + "','by':1}]}");
        assertThat(ask("answer", "{'name':'it.ipynb','id':'" + third + "'}")
                        .path("html")
                        .asText())
                .contains("a = 3 mm");
    }
}
