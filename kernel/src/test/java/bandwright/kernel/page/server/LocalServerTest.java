// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.server;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CopyOnWriteArrayList;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

import static org.assertj.core.api.Assertions.assertThat;

/** Every refusal of the door, asked by hand: what a page of somebody else, another user or a slip would send. */
class LocalServerTest {
    private static final List<String> PATHS = List.of("/", "/asset", "/change", "/events", "/nothing");

    private final List<String> links = new CopyOnWriteArrayList<>();
    private final List<String> changes = new CopyOnWriteArrayList<>();
    private final Events events = new Events();
    private LocalServer server;
    private String cookie = "";
    private String key = "";

    @BeforeEach
    void start() throws IOException {
        server = LocalServer.start(
                0,
                Map.of(
                        "/", Route.reads(asked -> Reply.html("key=" + asked.key() + " nonce=" + asked.nonce())),
                        "/asset", Route.reads(asked -> Reply.words(200, "an asset")),
                        "/change",
                                Route.changes(asked -> {
                                    changes.add(new String(asked.body(), StandardCharsets.UTF_8));
                                    return Reply.json("{}");
                                }),
                        "/fails",
                                Route.reads(asked -> {
                                    throw new IllegalStateException("a secret of ours");
                                })),
                events,
                links::add);
        String entered = ask("GET", URI.create(links.get(0)).getPath(), host());
        cookie = entered.replaceAll("(?s).*[Ss]et-[Cc]ookie: ([^;]+);.*", "$1");
        key = ask("GET", "/", host(), "Cookie: " + cookie).replaceAll("(?s).*key=(\\S+).*", "$1");
    }

    @AfterEach
    void stop() {
        server.close();
    }

    private String host() {
        return "Host: 127.0.0.1:" + server.port();
    }

    /** A question as its bytes; what comes back, head and all. */
    private String ask(String method, String path, String... headers) throws IOException {
        return send(
                method + " " + path + " HTTP/1.1\r\n" + String.join("\r\n", headers) + "\r\nConnection: close\r\n\r\n");
    }

    private String send(String question) throws IOException {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), server.port())) {
            socket.setSoTimeout(10_000);
            OutputStream out = socket.getOutputStream();
            out.write(question.getBytes(StandardCharsets.UTF_8));
            out.flush();
            ByteArrayOutputStream all = new ByteArrayOutputStream();
            InputStream in = socket.getInputStream();
            in.transferTo(all);
            return all.toString(StandardCharsets.UTF_8);
        }
    }

    private String post(String body, String... headers) throws IOException {
        List<String> all = new ArrayList<>(List.of(headers));
        return send("POST /change HTTP/1.1\r\n" + String.join("\r\n", all) + "\r\nContent-Length: "
                + body.getBytes(StandardCharsets.UTF_8).length + "\r\nConnection: close\r\n\r\n" + body);
    }

    private static int status(String answer) {
        return Integer.parseInt(answer.split(" ", 3)[1]);
    }

    private String cookieHeader() {
        return "Cookie: " + cookie;
    }

    @Test
    void who_holds_the_cookie_comes_in() throws IOException {
        assertThat(ask("GET", "/asset", host(), cookieHeader()))
                .startsWith("HTTP/1.1 200")
                .contains("an asset");
        assertThat(status(post(
                        "{}", host(), cookieHeader(), "Content-Type: application/json", "X-Bandwright-Key: " + key)))
                .isEqualTo(200);
        assertThat(changes).containsExactly("{}");
    }

    @Test
    void no_path_answers_without_the_cookie() throws IOException {
        for (String path : PATHS) {
            assertThat(status(ask("GET", path, host()))).as(path).isEqualTo(403);
            assertThat(status(ask("GET", path, host(), "Cookie: bandwright-" + server.port() + "=guess")))
                    .as(path)
                    .isEqualTo(403);
        }
    }

    @Test
    void no_path_answers_under_another_name_of_this_machine() throws IOException {
        for (String path : PATHS) {
            for (String name : List.of(
                    "evil.example:" + server.port(),
                    "127.0.0.1",
                    "127.0.0.1:1",
                    "127.0.0.1.evil.example:" + server.port())) {
                assertThat(status(ask("GET", path, "Host: " + name, cookieHeader())))
                        .as(path + " " + name)
                        .isEqualTo(403);
            }
            assertThat(status(ask("GET", path, host(), host(), cookieHeader())))
                    .as("two names")
                    .isIn(400, 403);
        }
        assertThat(status(ask("GET", "/asset", "Host: localhost:" + server.port(), cookieHeader())))
                .isEqualTo(200);
    }

    @Test
    void no_path_answers_another_page() throws IOException {
        for (String path : PATHS) {
            for (String origin : List.of(
                    "http://evil.example",
                    "null",
                    "http://127.0.0.1:1",
                    "https://127.0.0.1:" + server.port(),
                    "http://127.0.0.1:" + server.port() + ".evil.example")) {
                assertThat(status(ask("GET", path, host(), cookieHeader(), "Origin: " + origin)))
                        .as(path + " " + origin)
                        .isEqualTo(403);
            }
            assertThat(status(ask("GET", path, host(), cookieHeader(), "Sec-Fetch-Site: same-site")))
                    .isEqualTo(403);
        }
    }

    @Test
    void what_changes_something_needs_the_pages_key_and_json() throws IOException {
        String json = "Content-Type: application/json";
        assertThat(status(post("{}", host(), cookieHeader(), json))).isEqualTo(403);
        assertThat(status(post("{}", host(), cookieHeader(), json, "X-Bandwright-Key: guess")))
                .isEqualTo(403);
        assertThat(status(post("{}", host(), cookieHeader(), "Content-Type: text/plain", "X-Bandwright-Key: " + key)))
                .isEqualTo(415);
        assertThat(status(ask("GET", "/change", host(), cookieHeader()))).isEqualTo(405);
        assertThat(status(ask("DELETE", "/asset", host(), cookieHeader()))).isEqualTo(405);
        assertThat(changes).isEmpty();
    }

    @Test
    void a_body_has_an_end() throws IOException {
        String large = "x".repeat(Door.LARGEST_BODY + 1);
        String answer =
                post(large, host(), cookieHeader(), "Content-Type: application/json", "X-Bandwright-Key: " + key);
        assertThat(status(answer)).isEqualTo(413);
        assertThat(changes).isEmpty();
    }

    @Test
    void a_link_lets_one_browser_in() throws IOException {
        assertThat(links).hasSize(2).doesNotHaveDuplicates();
        String used = URI.create(links.get(0)).getPath();
        assertThat(status(ask("GET", used, host()))).isEqualTo(403);
        assertThat(status(ask("GET", URI.create(links.get(1)).getPath(), "Host: evil.example")))
                .isEqualTo(403);
        String entered = ask("GET", URI.create(links.get(1)).getPath(), host());
        assertThat(entered)
                .startsWith("HTTP/1.1 303")
                .containsPattern("(?i)location: /\r\n")
                .contains("HttpOnly; SameSite=Strict; Path=/");
        assertThat(links).hasSize(3);
    }

    @Test
    void every_answer_forbids_what_the_page_does_not_need() throws IOException {
        for (String answer : List.of(
                ask("GET", "/", host(), cookieHeader()),
                ask("GET", "/asset", host(), cookieHeader()),
                ask("GET", "/nothing", host(), cookieHeader()),
                ask("GET", "/", host()))) {
            assertThat(answer)
                    .containsPattern("(?i)content-security-policy: default-src 'none'; script-src 'self' 'nonce-")
                    .contains("frame-ancestors 'none'", "form-action 'none'")
                    .containsPattern("(?i)x-content-type-options: nosniff")
                    .containsPattern("(?i)referrer-policy: no-referrer")
                    .containsPattern("(?i)cache-control: no-store");
        }
        String page = ask("GET", "/", host(), cookieHeader());
        String nonce = page.replaceAll("(?s).*nonce=(\\S+).*", "$1");
        assertThat(page).contains("'nonce-" + nonce + "'");
        assertThat(ask("GET", "/", host(), cookieHeader())).doesNotContain(nonce);
    }

    @Test
    void a_path_is_a_whole_word() throws IOException {
        for (String path :
                List.of("/asset/..", "/asset/../asset", "/%61sset", "/asset%2f..%2fchange", "//asset", "/asset/")) {
            assertThat(status(ask("GET", path, host(), cookieHeader())))
                    .as(path)
                    .isIn(400, 404);
        }
    }

    @Test
    void a_fault_of_ours_tells_nothing_of_ours() throws IOException {
        String answer = ask("GET", "/fails", host(), cookieHeader());
        assertThat(status(answer)).isEqualTo(500);
        assertThat(answer).doesNotContain("secret").doesNotContain("Exception");
    }

    @Test
    void news_reach_a_page_that_listens() throws Exception {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), server.port())) {
            socket.setSoTimeout(10_000);
            socket.getOutputStream()
                    .write(("GET /events HTTP/1.1\r\n" + host() + "\r\n" + cookieHeader() + "\r\n\r\n")
                            .getBytes(StandardCharsets.UTF_8));
            StringBuilder heard = new StringBuilder();
            while (!heard.toString().contains("welcome")) {
                heard.append((char) socket.getInputStream().read());
            }
            events.tell("{\"changed\":\"it\"}");
            while (!heard.toString().contains("data: {\"changed\":\"it\"}\n\n")) {
                int next = socket.getInputStream().read();
                assertThat(next).isNotNegative();
                heard.append((char) next);
            }
        }
    }

    private Socket listener() throws IOException {
        Socket socket = new Socket();
        socket.setReceiveBufferSize(4096);
        socket.setSoTimeout(10_000);
        socket.connect(new InetSocketAddress(InetAddress.getLoopbackAddress(), server.port()));
        socket.getOutputStream()
                .write(("GET /events HTTP/1.1\r\n" + host() + "\r\n" + cookieHeader() + "\r\n\r\n")
                        .getBytes(StandardCharsets.UTF_8));
        return socket;
    }

    @Test
    @Timeout(60)
    void pages_that_take_nothing_are_let_go_and_hold_nobody_up() throws Exception {
        server.close();
        links.clear();
        server = LocalServer.start(
                0,
                Map.of("/asset", Route.reads(asked -> Reply.words(200, "an asset"))),
                events,
                links::add,
                Duration.ofMillis(400));
        cookie = ask("GET", URI.create(links.get(0)).getPath(), host())
                .replaceAll("(?s).*[Ss]et-[Cc]ookie: ([^;]+);.*", "$1");
        List<Socket> slow = new ArrayList<>();
        try {
            for (int i = 0; i < Events.MOST_LISTENERS; i++) {
                slow.add(listener());
            }
            while (events.listening() < Events.MOST_LISTENERS) {
                Thread.onSpinWait();
            }
            assertThat(status(ask("GET", "/events", host(), cookieHeader()))).isEqualTo(503);
            String news = "{\"changed\":\"" + "x".repeat(10_000) + "\"}";
            for (int i = 0; i < 2_000; i++) {
                // They read nothing; what is told to them meanwhile is more than their connections hold.
                events.tell(news);
                if (i % 200 == 0) {
                    assertThat(status(ask("GET", "/asset", host(), cookieHeader())))
                            .isEqualTo(200);
                }
            }
            while (events.listening() > 0) {
                Thread.sleep(20);
            }
            assertThat(status(ask("GET", "/asset", host(), cookieHeader()))).isEqualTo(200);
        } finally {
            for (Socket socket : slow) {
                socket.close();
            }
        }
    }
}
