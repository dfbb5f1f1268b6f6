// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.session;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import bandwright.kernel.Samples;
import bandwright.kernel.protocol.Channel;
import bandwright.kernel.protocol.Json;
import bandwright.kernel.protocol.Message;

import static org.assertj.core.api.Assertions.assertThat;

class InterruptTest {
    private static final long HALF_A_SECOND = 500_000_000;

    private Desk desk;

    @BeforeEach
    void opens_a_desk() throws Exception {
        desk = new Desk();
        desk.run(Samples.RING.replace("a = 4 mm", "a = 4 mm between 3 mm and 6 mm"));
    }

    @AfterEach
    void closes_it() {
        desk.close();
    }

    @Test
    void a_cell_that_does_not_heed_it_is_given_up_and_nothing_is_lost() {
        String id = desk.send("execute_request", Desk.code("trying\nwork 3000"));
        String behind = desk.send("execute_request", Desk.code("show a"));
        pause(200);
        long start = System.nanoTime();

        Message answer = desk.control("interrupt_request", Json.object());
        Message reply = desk.shell();
        long took = System.nanoTime() - start;

        assertThat(answer.content().path("status").asText()).isEqualTo("ok");
        assertThat(reply.parent().path("msg_id").asText()).isEqualTo(id);
        assertThat(reply.content().path("ename").asText()).isEqualTo("interrupted");
        // The promise is half a second; a build machine gets a little more.
        assertThat(took).isLessThan(HALF_A_SECOND + 200_000_000);
        assertThat(desk.told(behind).status()).isEqualTo("aborted");
        assertThat(desk.run("show a")
                        .first("display_data")
                        .path("data")
                        .path("text/plain")
                        .asText())
                .isEqualTo("a = 4 mm");
    }

    @Test
    void variants_stop_by_themselves_and_what_the_cell_makes_stands() {
        String id = desk.send(
                "execute_request",
                Desk.code("b = 7 mm\nvary a from 3 mm to 6 mm step 0.0001 mm { weight(ring) }\nshow b"));
        pause(1500);
        long start = System.nanoTime();

        desk.control("interrupt_request", Json.object());
        Desk.Told told = desk.told(id);
        long took = System.nanoTime() - start;

        assertThat(told.content().path("ename").asText()).isEqualTo("interrupted");
        assertThat(took).isLessThan(HALF_A_SECOND + 200_000_000);
        assertThat(told.types()).contains("display_data", "clear_output");
        assertThat(told.first("display_data").path("data").path("text/plain").asText())
                .contains("variants");
        assertThat(desk.run("show b").all("display_data")).hasSize(1);
    }

    @Test
    void a_question_to_the_user_can_be_interrupted() {
        String id = desk.send("execute_request", Desk.code("trying\nask").put("allow_stdin", true));
        desk.next(Channel.STDIN);

        desk.control("interrupt_request", Json.object());

        assertThat(desk.told(id)
                        .first("display_data")
                        .path("data")
                        .path("text/plain")
                        .asText())
                .isEqualTo("nobody");
    }

    @Test
    void a_function_in_java_that_ring_text_calls_can_be_interrupted() {
        desk.run("java\ndesign.function(\"endless\", x -> { while (true) { } });");
        String id = desk.send("execute_request", Desk.code("show endless(a)"));
        pause(700);

        desk.control("interrupt_request", Json.object());

        assertThat(desk.told(id).content().path("ename").asText()).isEqualTo("interrupted");
        assertThat(desk.run("show a").status()).isEqualTo("ok");
        assertThat(Thread.getAllStackTraces().entrySet())
                .noneMatch(entry -> java.util.Arrays.toString(entry.getValue()).contains("REPL."));
    }

    @Test
    void it_does_nothing_where_no_cell_runs() {
        desk.control("interrupt_request", Json.object());

        assertThat(desk.run("show a").status()).isEqualTo("ok");
    }

    private static void pause(int milliseconds) {
        try {
            Thread.sleep(milliseconds);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }
}
