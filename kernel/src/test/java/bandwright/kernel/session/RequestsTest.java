// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.session;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import com.fasterxml.jackson.databind.node.ObjectNode;

import bandwright.kernel.protocol.Channel;
import bandwright.kernel.protocol.Client;
import bandwright.kernel.protocol.Json;
import bandwright.kernel.protocol.Message;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

class RequestsTest {
    private final List<String> heard = new ArrayList<>();
    private Desk desk;

    @BeforeEach
    void opens_a_desk() throws Exception {
        CommTarget echo = new CommTarget() {
            @Override
            public void heard(Comm comm, ObjectNode data) {
                comm.send(data);
            }

            @Override
            public void closed(Comm comm, ObjectNode data) {
                heard.add("closed");
            }
        };
        desk = new Desk(new History(), Map.of("echo", echo));
    }

    @AfterEach
    void closes_it() {
        desk.close();
    }

    @Test
    void the_kernel_tells_who_it_is_on_shell_and_on_control() {
        ObjectNode info = desk.ask("kernel_info_request", Json.object()).content();

        assertThat(info.path("status").asText()).isEqualTo("ok");
        assertThat(info.path("protocol_version").asText()).isEqualTo("5.5");
        assertThat(info.path("implementation").asText()).isEqualTo("bandwright");
        assertThat(info.path("language_info").path("file_extension").asText()).isEqualTo(".ring");
        assertThat(info.path("supported_features").isArray()).isTrue();
        assertThat(desk.control("kernel_info_request", Json.object()).content()).isEqualTo(info);
    }

    @Test
    void headers_hold_one_session_of_our_own_and_the_full_time() {
        Message first = desk.ask("kernel_info_request", Json.object()).reply();
        Message second = desk.control("kernel_info_request", Json.object());

        assertThat(first.header().path("session")).isEqualTo(second.header().path("session"));
        assertThat(first.header().path("session")).isNotEqualTo(first.parent().path("session"));
        assertThat(first.header().path("version").asText()).isEqualTo("5.5");
        assertThat(first.header().path("msg_id")).isNotEqualTo(second.header().path("msg_id"));
        Instant time = Instant.parse(first.header().path("date").asText());
        assertThat(time).isCloseTo(Instant.now(), within(1, ChronoUnit.MINUTES));
    }

    @ParameterizedTest
    @ValueSource(strings = {"kernel_info", "is_complete", "complete", "inspect", "history", "comm_info"})
    void busy_and_idle_stand_around_every_request(String type) {
        ObjectNode content = Desk.code("a").put("hist_access_type", "tail");

        Desk.Told told = desk.ask(type + "_request", content);

        assertThat(told.reply().type()).isEqualTo(type + "_reply");
        assertThat(told.all("status").stream()
                        .map(state -> state.path("execution_state").asText()))
                .containsExactly("busy", "idle");
    }

    @Test
    void completion_counts_code_points() {
        ObjectNode content = Desk.code("title \"💍\"\nshow wei").put("cursor_pos", 18);

        ObjectNode reply = desk.ask("complete_request", content).content();

        assertThat(reply.path("cursor_start").asInt()).isEqualTo(15);
        assertThat(reply.path("cursor_end").asInt()).isEqualTo(18);
        assertThat(reply.path("matches").toString()).contains("weight");
    }

    @Test
    void a_word_is_explained_where_something_is_known_about_it() {
        desk.run("breadth = 4 mm");

        ObjectNode known = desk.ask("inspect_request", Desk.code("show breadth").put("cursor_pos", 7))
                .content();
        ObjectNode unknown = desk.ask(
                        "inspect_request", Desk.code("show nothing").put("cursor_pos", 7))
                .content();

        assertThat(known.path("found").asBoolean()).isTrue();
        assertThat(known.path("data").path("text/plain").asText()).contains("4 mm");
        assertThat(unknown.path("status").asText()).isEqualTo("ok");
        assertThat(unknown.path("found").asBoolean()).isFalse();
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '"',
            value = {"a = 4 mm,complete", "band shank {,incomplete", "a = 4 mm),invalid", "java,complete"})
    void the_enter_key_is_told_what_to_do(String code, String state) {
        ObjectNode reply = desk.ask("is_complete_request", Desk.code(code)).content();

        assertThat(reply.path("status").asText()).isEqualTo(state);
        assertThat(reply.path("indent").asText()).isEqualTo(state.equals("incomplete") ? "  " : "");
    }

    @Test
    void history_tells_the_last_a_range_and_what_fits_a_pattern() {
        desk.run("a = 1 mm");
        desk.run("show a");
        desk.run("a = 1 mm");

        assertThat(history("{'hist_access_type': 'tail', 'n': 2}")).isEqualTo("[[1,2,\"show a\"],[1,3,\"a = 1 mm\"]]");
        assertThat(history("{'hist_access_type': 'range', 'session': 0, 'start': 1, 'stop': 3, 'output': true}"))
                .isEqualTo("[[1,1,[\"a = 1 mm\",\"\"]],[1,2,[\"show a\",\"a = 1 mm\"]]]");
        assertThat(history("{'hist_access_type': 'search', 'pattern': 'a*', 'n': 5, 'unique': true}"))
                .isEqualTo("[[1,3,\"a = 1 mm\"]]");
    }

    private String history(String content) {
        return desk.ask("history_request", Desk.json(content))
                .content()
                .path("history")
                .toString();
    }

    @Test
    void a_comm_to_nobody_is_closed_at_once() {
        String id = desk.send("comm_open", Desk.json("{'comm_id': 'c', 'target_name': 'nobody', 'data': {}}"));

        List<Message> told = desk.heard(id);

        assertThat(told.stream().map(Message::type)).containsExactly("status", "comm_close", "status");
        assertThat(told.get(1).content().path("comm_id").asText()).isEqualTo("c");
        assertThat(comms("{}")).isEqualTo("{}");
    }

    @Test
    void a_comm_is_listed_heard_and_closed() {
        desk.heard(desk.send("comm_open", Desk.json("{'comm_id': 'c', 'target_name': 'echo', 'data': {}}")));
        List<Message> told = desk.heard(desk.send("comm_msg", Desk.json("{'comm_id': 'c', 'data': {'x': 1}}")));
        String listed = comms("{'target_name': 'echo'}");
        desk.heard(desk.send("comm_close", Desk.json("{'comm_id': 'c', 'data': {}}")));

        assertThat(told.get(1).type()).isEqualTo("comm_msg");
        assertThat(told.get(1).content().path("data").path("x").asInt()).isEqualTo(1);
        assertThat(listed).isEqualTo("{\"c\":{\"target_name\":\"echo\"}}");
        assertThat(comms("{}")).isEqualTo("{}");
        assertThat(heard).containsExactly("closed");
    }

    private String comms(String content) {
        return desk.ask("comm_info_request", Desk.json(content))
                .content()
                .path("comms")
                .toString();
    }

    @Test
    void a_request_without_what_it_needs_gets_an_error_for_a_reply() {
        Desk.Told told = desk.ask("execute_request", Json.object());

        assertThat(told.status()).isEqualTo("error");
        assertThat(told.content().path("ename").asText()).isEqualTo("bad-request");
    }

    @Test
    void an_unknown_request_is_passed_over() {
        List<Message> told = desk.heard(desk.send("brew_coffee_request", Json.object()));

        assertThat(told).hasSize(2);
        assertThat(desk.log).anyMatch(line -> line.contains("brew_coffee_request"));
        assertThat(desk.run("show 1 mm").status()).isEqualTo("ok");
    }

    @Test
    void every_client_is_welcomed_on_iopub() {
        try (Client second = new Client(desk.connection)) {
            Message welcome = second.message(Channel.IOPUB, 5 * Desk.SECONDS).orElseThrow();

            assertThat(welcome.type()).isEqualTo("iopub_welcome");
            assertThat(welcome.content().path("subscription").asText()).isEmpty();
            assertThat(welcome.parent()).isEmpty();
        }
    }

    @Test
    void the_heart_beats_while_a_cell_works() {
        desk.send("execute_request", Desk.code("trying\nwork 600"));
        long start = System.nanoTime();

        desk.client.send(Channel.HB, List.of(new byte[] {'p'}));

        assertThat(desk.client.receive(Channel.HB, Desk.SECONDS)).containsExactly(new byte[] {'p'});
        assertThat(System.nanoTime() - start).isLessThan(500_000_000);
    }

    @Test
    void shutdown_is_answered_and_ends_the_kernel_also_while_a_cell_works() throws Exception {
        desk.send("execute_request", Desk.code("trying\nwork 5000"));
        Message reply = desk.control("shutdown_request", Json.object().put("restart", true));

        desk.kernel.awaitEnd();

        assertThat(reply.type()).isEqualTo("shutdown_reply");
        assertThat(reply.content().path("status").asText()).isEqualTo("ok");
        assertThat(reply.content().path("restart").asBoolean()).isTrue();
    }

    @Test
    void shutdown_works_on_shell_too() throws Exception {
        Desk.Told told = desk.ask("shutdown_request", Json.object().put("restart", false));

        desk.kernel.awaitEnd();

        assertThat(told.content().path("restart").asBoolean()).isFalse();
    }
}
