// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.session;

import java.util.List;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

import bandwright.kernel.protocol.Channel;
import bandwright.kernel.protocol.Json;
import bandwright.kernel.protocol.Message;
import bandwright.kernel.protocol.Sockets;
import bandwright.kernel.protocol.Stamp;

/**
 * A request, and the way back for all that it leads to. May be used by any thread.
 *
 * @param channel through which the request came
 */
record Exchange(Sockets sockets, Stamp stamp, Channel channel, Message request) {
    private static final String REQUEST = "_request";

    /** What the request says. */
    ObjectNode content() {
        return request.content();
    }

    /** A text of the request. */
    String text(String key) throws BadRequest {
        JsonNode value = content().path(key);
        if (!value.isTextual()) {
            throw new BadRequest(request.type() + " without a text '" + key + "'");
        }
        return value.textValue();
    }

    boolean wantsReply() {
        return request.type().endsWith(REQUEST);
    }

    void reply(ObjectNode content) {
        reply(content, Json.object());
    }

    void reply(ObjectNode content, ObjectNode metadata) {
        String type = request.type().replace(REQUEST, "_reply");
        sockets.reply(channel, stamp.reply(request, type, content, metadata));
    }

    void fail(String name, String message) {
        reply(error(name, message, List.of(name + ": " + message)).put("status", "error"));
    }

    /** A message to all clients. */
    void publish(String type, ObjectNode content) {
        sockets.broadcast(stamp.broadcast(type, request.header(), type, content, Json.object()));
    }

    /** A question to the user of the client that sent the request. */
    void ask(ObjectNode content) {
        sockets.reply(Channel.STDIN, stamp.reply(request, "input_request", content, Json.object()));
    }

    void state(String word) {
        publish("status", Json.object().put("execution_state", word));
    }

    static ObjectNode ok() {
        return Json.object().put("status", "ok");
    }

    /** An error as replies and iopub tell it. */
    static ObjectNode error(String name, String message, List<String> traceback) {
        ObjectNode error = Json.object().put("ename", name).put("evalue", message);
        ArrayNode lines = error.putArray("traceback");
        traceback.forEach(lines::add);
        return error;
    }
}
