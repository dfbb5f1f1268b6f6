// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.session;

import java.util.List;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import com.fasterxml.jackson.databind.node.ObjectNode;

import bandwright.kernel.protocol.Channel;
import bandwright.kernel.protocol.Json;
import bandwright.kernel.protocol.Message;

import static org.assertj.core.api.Assertions.assertThat;

class ExecuteTest {
    private Desk desk;

    @BeforeEach
    void opens_a_desk() throws Exception {
        desk = new Desk();
    }

    @AfterEach
    void closes_it() {
        desk.close();
    }

    @Test
    void a_cell_is_counted_and_shown_between_busy_and_idle() {
        desk.run("a = 4 mm");

        Desk.Told told = desk.run("show a");

        assertThat(told.status()).isEqualTo("ok");
        assertThat(told.content().path("execution_count").asInt()).isEqualTo(2);
        assertThat(told.content().path("payload").isArray()).isTrue();
        assertThat(told.types()).containsExactly("status", "execute_input", "display_data", "status");
        assertThat(told.first("execute_input").path("code").asText()).isEqualTo("show a");
        assertThat(told.first("execute_input").path("execution_count").asInt()).isEqualTo(2);
        assertThat(told.first("display_data").path("data").path("text/plain").asText())
                .isEqualTo("a = 4 mm");
        assertThat(told.first("display_data").path("transient").isObject()).isTrue();
    }

    @Test
    void an_error_is_the_same_in_the_reply_and_on_iopub_and_changes_nothing() {
        desk.run("a = 4 mm");

        Desk.Told told = desk.run("a = 5 mm\nb = a + 2 g");

        ObjectNode error = told.first("error");
        assertThat(told.status()).isEqualTo("error");
        assertThat(error.path("ename").asText()).isEqualTo("unit-mismatch");
        assertThat(error.path("traceback")).isNotEmpty();
        for (String key : List.of("ename", "evalue", "traceback")) {
            assertThat(told.content().path(key)).isEqualTo(error.path(key));
        }
        assertThat(desk.run("show a")
                        .first("display_data")
                        .path("data")
                        .path("text/plain")
                        .asText())
                .isEqualTo("a = 4 mm");
    }

    @Test
    void a_silent_cell_says_nothing_and_does_not_count() {
        desk.run("a = 4 mm");

        Desk.Told told =
                desk.ask("execute_request", Desk.code("b = 5 mm\nshow b").put("silent", true));

        assertThat(told.types()).containsExactly("status", "status");
        assertThat(told.content().path("execution_count").asInt()).isEqualTo(1);
        assertThat(desk.run("show b").content().path("execution_count").asInt()).isEqualTo(2);
    }

    @Test
    void a_cell_that_is_not_stored_is_shown_but_does_not_count() {
        Desk.Told told = desk.ask("execute_request", Desk.code("show 3 mm").put("store_history", false));

        assertThat(told.types()).contains("execute_input", "display_data");
        assertThat(told.content().path("execution_count").asInt()).isZero();
        assertThat(history()).isEqualTo("[]");
    }

    private String history() {
        ObjectNode reply = desk.ask("history_request", Desk.json("{'hist_access_type': 'tail', 'n': 9}"))
                .content();
        return reply.path("history").toString();
    }

    @Test
    void user_expressions_are_worked_out_each_by_itself() {
        ObjectNode content = Desk.code("a = 4 mm");
        content.putObject("user_expressions").put("twice", "2 * a").put("wrong", "a + 1 g");

        ObjectNode values =
                (ObjectNode) desk.ask("execute_request", content).content().path("user_expressions");

        assertThat(values.path("twice").path("status").asText()).isEqualTo("ok");
        assertThat(values.path("twice").path("data").path("text/plain").asText())
                .contains("8 mm");
        assertThat(values.path("wrong").path("status").asText()).isEqualTo("error");
        assertThat(values.path("wrong").path("ename").asText()).isEqualTo("unit-mismatch");
        assertThat(values.path("wrong").path("traceback")).isNotEmpty();
    }

    @Test
    void an_error_aborts_the_cells_that_wait_and_nothing_else() {
        List<String> ids = List.of(
                desk.send("execute_request", Desk.code("trying\nwork 100")),
                desk.send("execute_request", Desk.code("b = ")),
                desk.send("execute_request", Desk.code("c = 1 mm")),
                desk.send("kernel_info_request", Json.object()),
                desk.send("execute_request", Desk.code("c = 2 mm")));

        List<String> states = ids.stream()
                .map(id -> desk.shell().content().path("status").asText())
                .toList();

        assertThat(states).containsExactly("ok", "error", "aborted", "ok", "aborted");
        assertThat(desk.run("c = 3 mm").status()).isEqualTo("ok");
    }

    @Test
    void an_error_aborts_nothing_where_the_client_says_so() {
        desk.send("execute_request", Desk.code("b = ").put("stop_on_error", false));
        desk.send("execute_request", Desk.code("c = 1 mm"));

        assertThat(desk.shell().content().path("status").asText()).isEqualTo("error");
        assertThat(desk.shell().content().path("status").asText()).isEqualTo("ok");
    }

    @Test
    void many_lines_travel_in_few_messages_and_in_order() {
        Desk.Told told = desk.run("trying\nprint 20000");

        List<ObjectNode> streams = told.all("stream");
        StringBuilder text = new StringBuilder();
        streams.stream()
                .filter(stream -> stream.path("name").asText().equals("stdout"))
                .forEach(stream -> text.append(stream.path("text").asText()));
        assertThat(streams).hasSizeLessThan(100);
        assertThat(text.toString().lines()).hasSize(20_000).startsWith("line 1").endsWith("line 20000");
        assertThat(streams.get(streams.size() - 1).path("name").asText()).isEqualTo("stderr");
    }

    @Test
    void what_is_shown_can_be_changed_and_taken_away() {
        Desk.Told told = desk.run("trying\nshow");

        assertThat(told.types())
                .containsExactly(
                        "status",
                        "execute_input",
                        "display_data",
                        "update_display_data",
                        "clear_output",
                        "display_data",
                        "status");
        assertThat(told.first("display_data")
                        .path("transient")
                        .path("display_id")
                        .asText())
                .isEqualTo(told.first("update_display_data")
                        .path("transient")
                        .path("display_id")
                        .asText())
                .isEqualTo("an-id");
        assertThat(told.first("clear_output").path("wait").asBoolean()).isTrue();
    }

    @Test
    void a_cell_may_ask_the_user() {
        String id = desk.send("execute_request", Desk.code("trying\nask").put("allow_stdin", true));
        Message question = desk.next(Channel.STDIN);

        desk.client.send(Channel.STDIN, "input_reply", Json.object().put("value", "Ada"));

        assertThat(question.type()).isEqualTo("input_request");
        assertThat(question.content().path("prompt").asText()).isEqualTo("name? ");
        assertThat(question.content().path("password").asBoolean()).isTrue();
        assertThat(question.parent().path("msg_id").asText()).isEqualTo(id);
        assertThat(desk.told(id)
                        .first("display_data")
                        .path("data")
                        .path("text/plain")
                        .asText())
                .isEqualTo("Ada");
    }

    @Test
    void a_cell_does_not_ask_where_the_client_allows_none() {
        Desk.Told told = desk.run("trying\nask");

        assertThat(told.first("display_data").path("data").path("text/plain").asText())
                .isEqualTo("nobody");
    }

    @Test
    void a_fault_of_ours_is_told_and_the_kernel_goes_on() {
        Desk.Told told = desk.run("trying\nfail");

        assertThat(told.status()).isEqualTo("error");
        assertThat(told.content().path("ename").asText()).isEqualTo("program-fault");
        assertThat(desk.run("show 1 mm").status()).isEqualTo("ok");
    }

    @Test
    void a_java_cell_prints_shows_and_makes_what_was_shown_before_stale() {
        desk.runCell("one", "a = 4 mm");
        desk.runCell("two", "show a");

        Desk.Told told = desk.runCell(
                "three",
                "java\nSystem.out.println(\"printed\");\ndesign.set(\"a\", mm(5));\ndesign.get(\"a\").times(2)");

        assertThat(told.status()).isEqualTo("ok");
        assertThat(told.all("stream"))
                .extracting(stream -> stream.path("text").asText())
                .anyMatch("printed\n"::equals)
                .anyMatch("cell 2 shows what no longer holds; run it again\n"::equals);
        assertThat(told.first("display_data").path("data").path("text/plain").asText())
                .isEqualTo("10 mm");
        assertThat(desk.runCell("four", "a = 6 mm").all("stream"))
                .extracting(stream -> stream.path("text").asText())
                .anyMatch("cell 3 shows what no longer holds; run it again\n"::equals);
    }

    @Test
    void a_deleted_java_cell_takes_its_variables_along() {
        desk.runCell("one", "java\nint gone = 1;");
        Desk.Told told = desk.ask(
                "execute_request", Desk.code("java\ngone"), Desk.json("{'deletedCells': ['one'], 'cellId': 'two'}"));

        assertThat(told.content().path("ename").asText()).isEqualTo("java-compile");
    }

    @Test
    void a_java_cell_asks_the_user_who_may_interrupt() {
        String id = desk.send(
                "execute_request",
                Desk.code("java\nnew Scanner(System.in).nextLine()").put("allow_stdin", true));
        desk.next(bandwright.kernel.protocol.Channel.STDIN);

        desk.control("interrupt_request", Desk.json("{}"));

        assertThat(desk.told(id).content().path("ename").asText()).isEqualTo("interrupted");
        assertThat(desk.run("java\nask(\"?\")").content().path("evalue").asText())
                .contains("nobody can be asked");
    }

    @Test
    void a_cell_run_again_replaces_what_it_made() {
        desk.runCell("one", "a = 4 mm");

        Desk.Told told = desk.runCell("one", "b = 4 mm");

        assertThat(told.types()).doesNotContain("stream");
        assertThat(desk.runCell("two", "show a").all("display_data")).isEmpty();
    }

    @Test
    void a_deleted_cell_takes_what_it_made_with_it() {
        desk.runCell("one", "a = 4 mm");

        desk.ask("execute_request", Desk.code("b = 1 mm"), Desk.json("{'cellId': 'two', 'deletedCells': ['one']}"));

        assertThat(desk.runCell("three", "show a").all("display_data")).isEmpty();
    }

    @Test
    void without_cell_ids_the_last_definition_wins_and_a_note_says_so() {
        desk.run("a = 4 mm");

        Desk.Told told = desk.run("a = 5 mm");

        assertThat(told.status()).isEqualTo("ok");
        assertThat(told.first("stream").path("text").asText()).contains("a replaces what was defined in cell 1");
    }

    @Test
    void what_no_longer_holds_is_named_once_and_listed_until_it_is_run_again() {
        desk.runCell("size", "a = 4 mm");
        desk.runCell("shown", "show a");
        desk.runCell("other", "show 3 mm");

        Desk.Told told = desk.runCell("size", "a = 5 mm");
        Desk.Told later = desk.runCell("more", "c = 1 mm");
        Desk.Told mended = desk.runCell("shown", "show a");

        assertThat(told.first("stream").path("name").asText()).isEqualTo("stdout");
        assertThat(told.first("stream").path("text").asText())
                .isEqualTo("cell 2 shows what no longer holds; run it again\n");
        assertThat(stale(told)).containsExactly("shown");
        assertThat(later.all("stream")).isEmpty();
        assertThat(stale(later)).containsExactly("shown");
        assertThat(stale(mended)).isEmpty();
    }

    private static List<String> stale(Desk.Told told) {
        return told.reply().metadata().path("bandwright").path("stale").findValuesAsText("cell_id");
    }

    @Test
    void two_hundred_cells_are_answered_in_order() {
        for (int number = 0; number < 200; number++) {
            desk.send("execute_request", Desk.code("show " + number + " mm"));
        }
        for (int number = 1; number <= 200; number++) {
            assertThat(desk.shell().content().path("execution_count").asInt()).isEqualTo(number);
        }
    }
}
