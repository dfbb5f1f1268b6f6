// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.session;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CopyOnWriteArrayList;

import com.fasterxml.jackson.databind.node.ObjectNode;

import bandwright.kernel.cell.CellLanguages;
import bandwright.kernel.cell.java.JavaCells;
import bandwright.kernel.files.ExportFolder;
import bandwright.kernel.protocol.Channel;
import bandwright.kernel.protocol.Client;
import bandwright.kernel.protocol.Connection;
import bandwright.kernel.protocol.Json;
import bandwright.kernel.protocol.Message;

/** A kernel in this process and a client that speaks to it over sockets. */
final class Desk implements AutoCloseable {
    static final int SECONDS = 1000;

    final Connection connection;
    private final CellLanguages languages;
    final Kernel kernel;
    final Client client;
    final List<String> log = new CopyOnWriteArrayList<>();

    Desk() throws Exception {
        this(new History(), Map.of());
    }

    /** @param exports where files go */
    Desk(Path exports) throws Exception {
        this(new History(), Map.of(), exports);
    }

    Desk(History history, Map<String, CommTarget> targets) throws Exception {
        this(history, targets, Path.of("target", "exports"));
    }

    private Desk(History history, Map<String, CommTarget> targets, Path exports) throws Exception {
        connection = Connection.onFreePorts("a key");
        List<bandwright.kernel.cell.CellLanguage> others = new ArrayList<>(List.of(new JavaCells()));
        others.add(new TryingCells());
        languages = new CellLanguages(others);
        kernel = Kernel.start(connection, languages, history, targets, new ExportFolder(exports), log::add);
        client = new Client(connection);
        // The welcome says that nothing on iopub will be missed from now on.
        Message welcome = iopub();
        if (!welcome.type().equals("iopub_welcome")) {
            throw new IllegalStateException("no welcome but " + welcome.type());
        }
    }

    static ObjectNode json(String text) {
        try {
            return Json.parse(text.replace('\'', '"'));
        } catch (bandwright.kernel.protocol.MalformedMessage malformed) {
            throw new IllegalStateException(malformed);
        }
    }

    static ObjectNode code(String code) {
        return Json.object().put("code", code);
    }

    String send(String type, ObjectNode content) {
        return client.send(Channel.SHELL, type, content);
    }

    Message next(Channel channel) {
        return client.message(channel, 20 * SECONDS)
                .orElseThrow(() -> new AssertionError("nothing came on " + channel));
    }

    Message shell() {
        return next(Channel.SHELL);
    }

    Message iopub() {
        return next(Channel.IOPUB);
    }

    Message control(String type, ObjectNode content) {
        client.send(Channel.CONTROL, type, content);
        return next(Channel.CONTROL);
    }

    /** What a request led to. */
    record Told(Message reply, List<Message> heard) {
        ObjectNode content() {
            return reply.content();
        }

        String status() {
            return content().path("status").asText();
        }

        List<String> types() {
            return heard.stream().map(Message::type).toList();
        }

        ObjectNode first(String type) {
            return heard.stream()
                    .filter(message -> message.type().equals(type))
                    .map(Message::content)
                    .findFirst()
                    .orElseThrow(() -> new AssertionError("no " + type + " among " + types()));
        }

        List<ObjectNode> all(String type) {
            return heard.stream()
                    .filter(message -> message.type().equals(type))
                    .map(Message::content)
                    .toList();
        }
    }

    Told ask(String type, ObjectNode content) {
        return ask(type, content, Json.object());
    }

    Told ask(String type, ObjectNode content, ObjectNode metadata) {
        String id = client.send(Channel.SHELL, client.message(type, content, metadata));
        return told(id);
    }

    /** The reply to a request, and all on iopub until idle. */
    Told told(String id) {
        Message reply = shell();
        if (!reply.parent().path("msg_id").asText().equals(id)) {
            throw new AssertionError("a reply to another request: " + reply.parent());
        }
        return new Told(reply, heard(id));
    }

    List<Message> heard(String id) {
        List<Message> heard = new ArrayList<>();
        while (true) {
            Message message = iopub();
            if (!message.parent().path("msg_id").asText().equals(id)) {
                continue;
            }
            heard.add(message);
            if (message.content().path("execution_state").asText().equals("idle")) {
                return heard;
            }
        }
    }

    Told run(String code) {
        return ask("execute_request", code(code));
    }

    Told runCell(String cellId, String code) {
        return ask("execute_request", code(code), Json.object().put("cellId", cellId));
    }

    @Override
    public void close() {
        client.close();
        kernel.close();
        languages.close();
    }
}
