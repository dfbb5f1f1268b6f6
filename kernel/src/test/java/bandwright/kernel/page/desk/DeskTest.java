// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.desk;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;

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

    private JsonNode type(String name, String id, String known, String source) throws IOException {
        return ask("change", typing(name, id, known, source));
    }

    /** @param known what the page believes the text to be */
    private static String typing(String name, String id, String known, String source) throws IOException {
        return "{'name':'" + name + "','changes':[{'do':'type','id':'" + id + "','known':["
                + JSON.writeValueAsString(known) + "],'source':" + JSON.writeValueAsString(source) + "}]}";
    }

    private JsonNode act(String name, String change) throws IOException {
        return ask("change", "{'name':'" + name + "','changes':[" + change + "]}");
    }

    private String opened(String name) throws IOException {
        return ask("open", "{'name':'" + name + "'}")
                .path("cells")
                .get(0)
                .path("id")
                .asText();
    }

    private static List<String> sources(JsonNode state) {
        List<String> sources = new ArrayList<>();
        state.path("cells").forEach(cell -> sources.add(cell.path("source").asText()));
        return sources;
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

        JsonNode wider = type("it.ring", id, RING, RING.replace("= 4 mm", "= 5 mm"));
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
        JsonNode broken = type("it.ring", id, RING, RING.replace("1.8 mm)", "1.8 mm"));
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
        type("it.ring", id, RING, RING + "# typed\n");
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
    void two_pages_that_change_one_cell_keep_both_texts() throws IOException, DeskFault {
        ask("new", "{'name':'it.ipynb','start':'a plain band'}");
        String id = ask("open", "{'name':'it.ipynb'}")
                .path("cells")
                .get(0)
                .path("id")
                .asText();
        type("it.ipynb", id, Starts.text("a plain band", "it.ring"), "# one\n");
        JsonNode other = type("it.ipynb", id, Starts.text("a plain band", "it.ring"), "# other\n");
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
        type(
                "it.ring",
                id,
                state.path("cells").get(0).path("source").asText(),
                state.path("cells").get(0).path("source").asText() + "\n");
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
        type("typed.ring", id, RING, RING + "# mine\n");
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
        type("it.ring", id, RING, RING + "# one\n");
        assertThat(fault("change", typing("it.ring", id, RING, RING + "# other\n")))
                .contains("it-other-1.ring");
        assertThat(Files.readString(folder.resolve("it-other-1.ring"))).endsWith("# other\n");

        fault("change", typing("it.ring", id, RING, RING + "# other\n"));
        assertThat(folder.resolve("it-other-2.ring"))
                .as("the same text once more")
                .doesNotExist();
    }

    @Test
    void a_page_that_did_not_hear_that_its_text_arrived_is_in_no_conflict_with_itself() throws IOException {
        Files.writeString(folder.resolve("it.ring"), RING);
        String id = opened("it.ring");
        type("it.ring", id, RING, RING + "# one\n");
        // The program is killed, and its answer with it; the page goes on from what it has sent.
        desk = new Desk(folder, new Events());
        JsonNode state = ask(
                "change",
                "{'name':'it.ring','changes':[{'do':'type','id':'" + opened("it.ring") + "','known':["
                        + JSON.writeValueAsString(RING) + "," + JSON.writeValueAsString(RING + "# one\n")
                        + "],'source':" + JSON.writeValueAsString(RING + "# one, two\n") + "}]}");
        assertThat(state.path("conflicts")).isEmpty();
        assertThat(sources(state)).containsExactly(RING + "# one, two\n");
    }

    @Test
    void what_was_done_is_taken_back_and_done_again_also_by_a_desk_that_comes_after_a_killed_one() throws IOException {
        ask("new", "{'name':'it.ipynb','start':'nothing'}");
        String first = opened("it.ipynb");
        type("it.ipynb", first, "", "a = 1 mm");
        type("it.ipynb", first, "a = 1 mm", "a = 12 mm");
        type("it.ipynb", first, "a = 12 mm", "a = 12 mm\n");
        String second = act("it.ipynb", "{'do':'insert','after':'" + first + "','kind':'markdown','source':'words'}")
                .path("made")
                .asText();
        act("it.ipynb", "{'do':'move','id':'" + second + "','by':-1}");
        act("it.ipynb", "{'do':'remove','id':'" + first + "'}");

        desk = new Desk(folder, new Events());
        assertThat(ask("open", "{'name':'it.ipynb'}").path("back").asBoolean()).isTrue();
        assertThat(sources(back("it.ipynb"))).containsExactly("words", "a = 12 mm\n");
        assertThat(sources(back("it.ipynb"))).containsExactly("a = 12 mm\n", "words");
        assertThat(sources(back("it.ipynb"))).containsExactly("a = 12 mm\n");
        ask("save", "{'name':'it.ipynb'}");

        desk = new Desk(folder, new Events());
        assertThat(sources(back("it.ipynb"))).containsExactly("a = 12 mm");
        JsonNode begun = back("it.ipynb");
        assertThat(sources(begun)).as("typing in one line is one step").containsExactly("");
        assertThat(begun.path("back").asBoolean()).isFalse();
        assertThat(fault("back", "{'name':'it.ipynb'}")).contains("nothing");
        for (int i = 0; i < 4; i++) {
            ask("again", "{'name':'it.ipynb'}");
        }
        assertThat(sources(ask("again", "{'name':'it.ipynb'}"))).containsExactly("words");
    }

    private JsonNode back(String name) throws IOException {
        return ask("back", "{'name':'" + name + "'}");
    }

    @Test
    void the_past_of_a_file_that_another_program_has_written_is_forgotten_and_its_draft_stands_beside_it()
            throws IOException {
        Files.writeString(folder.resolve("it.ring"), RING);
        type("it.ring", opened("it.ring"), RING, RING + "# mine\n");
        Files.writeString(folder.resolve("it.ring"), RING + "# theirs\n");
        desk = new Desk(folder, new Events());
        JsonNode state = ask("open", "{'name':'it.ring'}");
        assertThat(sources(state)).containsExactly(RING + "# theirs\n");
        assertThat(state.path("back").asBoolean()).isFalse();
        assertThat(state.path("beside").asText()).isEqualTo("it-other-1.ring");
        assertThat(folder.resolve("it-other-1.ring")).hasContent(RING + "# mine\n");
    }

    @Test
    void what_another_program_writes_is_read_again_as_long_as_nothing_was_typed_here() throws IOException {
        Files.writeString(folder.resolve("it.ring"), RING);
        String id = opened("it.ring");
        double narrow = number(ask("answer", "{'name':'it.ring','id':'" + id + "','person':true}"), "part shank")
                .asDouble();
        Files.writeString(folder.resolve("it.ring"), RING.replace("= 4 mm", "= 5 mm"));
        JsonNode read = ask("open", "{'name':'it.ring'}");
        assertThat(read.path("readAgain").asBoolean()).isTrue();
        assertThat(sources(read)).containsExactly(RING.replace("= 4 mm", "= 5 mm"));
        assertThat(number(read, "part shank").asDouble()).isGreaterThan(1.2 * narrow);
        assertThat(sources(back("it.ring"))).containsExactly(RING);

        Files.writeString(folder.resolve("it.ring"), "# theirs\n");
        JsonNode typed = ask("open", "{'name':'it.ring'}");
        assertThat(typed.path("readAgain").asBoolean())
                .as("what was taken back here is not theirs to lose")
                .isFalse();
        assertThat(sources(typed)).containsExactly(RING);
    }

    @Test
    void results_alone_are_not_written_beside_what_another_program_wrote() throws IOException {
        Files.writeString(folder.resolve("it.ring"), RING);
        String id = opened("it.ring");
        ask("answer", "{'name':'it.ring','id':'" + id + "','person':true}");
        Files.writeString(folder.resolve("it.ring"), "# theirs\n");
        desk.close();
        assertThat(folder.resolve("it.ring")).hasContent("# theirs\n");
        assertThat(folder.resolve("it-other-1.ring")).doesNotExist();
    }

    @Test
    void the_past_has_a_bound() throws IOException {
        ask("new", "{'name':'it.ipynb','start':'nothing'}");
        String id = opened("it.ipynb");
        String known = "";
        String line = "# " + "x".repeat(2000) + "\n";
        for (int i = 0; i < Past.MOST_STEPS + 50; i++) {
            String next = known.length() > 40_000 ? line : known + line;
            type("it.ipynb", id, known, next);
            known = next;
        }
        assertThat(Files.size(folder.resolve(".it.ipynb.past"))).isLessThan(Past.MOST_LETTERS + 50_000L);
        assertThat(sources(back("it.ipynb"))).doesNotContain(known);
    }

    @Test
    void results_that_are_cleared_away_come_again_when_this_is_taken_back() throws IOException {
        Files.writeString(folder.resolve("it.ring"), RING);
        String id = opened("it.ring");
        ask("answer", "{'name':'it.ring','id':'" + id + "'}");
        assertThat(act("it.ring", "{'do':'clear'}")
                        .path("cells")
                        .get(0)
                        .path("silent")
                        .asBoolean())
                .isTrue();
        assertThat(ask("open", "{'name':'it.ring'}").path("cells").get(0).has("out"))
                .isFalse();
        assertThat(back("it.ring").path("cells").get(0).path("out").asText()).contains("<table");
    }

    @Test
    void a_sheet_and_a_handout_are_given_and_nothing_is_written() throws IOException {
        ask("new", "{'name':'it.ipynb','start':'a plain band'}");
        Path file = folder.resolve("it.ipynb");
        String id = opened("it.ipynb");
        act("it.ipynb", "{'do':'insert','after':'" + id + "','kind':'markdown','source':'the answer is 42'}");
        ask("save", "{'name':'it.ipynb'}");
        desk.close();
        JsonNode tree = JSON.readTree(Files.readString(file));
        ((ObjectNode) tree.path("cells").get(1).path("metadata"))
                .putArray("tags")
                .add("solution");
        Files.writeString(file, tree.toString());
        desk = new Desk(folder, new Events());
        opened("it.ipynb");
        List<Path> before = files();

        assertThat(handOut("sheet")).startsWith("it.sheet.pdf %PDF");
        assertThat(handOut("page"))
                .startsWith("it.handout.html <!DOCTYPE html>")
                .contains("shank")
                .doesNotContain("the answer is 42");
        assertThat(handOut("paper")).startsWith("it.handout.pdf %PDF");
        assertThat(files()).isEqualTo(before);
        assertThat(fault("hand-out", "{'name':'it.ipynb','what':'else'}")).isNotEmpty();
    }

    @Test
    void a_sheet_is_as_the_notebook_wants_it_and_wants_a_ring() throws IOException {
        Files.writeString(folder.resolve("it.ring"), RING + "sheet \"mine.pdf\" { paper letter }\n");
        Files.writeString(folder.resolve("none.ring"), "a = 2 mm\n");
        assertThat(ask("hand-out", "{'name':'it.ring','what':'sheet'}")
                        .path("file")
                        .asText())
                .isEqualTo("it.sheet.pdf");
        assertThat(folder.resolve("mine.pdf")).doesNotExist();
        assertThat(fault("hand-out", "{'name':'none.ring','what':'sheet'}")).isNotEmpty();
    }

    @Test
    void programs_run_for_a_handout_when_a_person_says_so() throws IOException {
        Path made = folder.resolve("made-by-java");
        Files.writeString(
                folder.resolve("it.ring"),
                "java\njava.nio.file.Files.writeString(java.nio.file.Path.of(\"" + made + "\"), \"x\");\n");
        ask("hand-out", "{'name':'it.ring','what':'page'}");
        assertThat(made).doesNotExist();
        ask("hand-out", "{'name':'it.ring','what':'page','programs':true}");
        assertThat(made).exists();
    }

    private String handOut(String what) throws IOException {
        JsonNode given = ask("hand-out", "{'name':'it.ipynb','what':'" + what + "'}");
        byte[] bytes = Base64.getDecoder().decode(given.path("bytes").asText());
        return given.path("file").asText() + " " + new String(bytes, StandardCharsets.UTF_8);
    }

    private List<Path> files() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().toList();
        }
    }

    @Test
    void a_copy_beside_a_changed_file_is_written_once_and_then_anew() throws IOException {
        Files.writeString(folder.resolve("it.ring"), RING);
        String id = opened("it.ring");
        type("it.ring", id, RING, RING + "# mine\n");
        Files.writeString(folder.resolve("it.ring"), "# theirs\n");
        assertThat(fault("save", "{'name':'it.ring'}")).contains("it-other-1.ring");
        type("it.ring", id, RING + "# mine\n", RING + "# mine, too\n");
        assertThat(fault("save", "{'name':'it.ring'}")).contains("it-other-1.ring");
        assertThat(Files.readString(folder.resolve("it-other-1.ring"))).endsWith("# mine, too\n");
        Files.writeString(folder.resolve("it-other-1.ring"), "# precious\n");
        assertThat(fault("save", "{'name':'it.ring'}")).contains("it-other-2.ring");
        assertThat(folder.resolve("it-other-1.ring")).hasContent("# precious\n");
        assertThat(folder.resolve("it.ring")).hasContent("# theirs\n");
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
        JsonNode state = type("it.ipynb", first, "", "a = 3 mm");
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
