// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.protocol;

import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.UUID;

import com.fasterxml.jackson.databind.node.ObjectNode;

/** Makes messages of one kernel process: each with an id of its own, all with the session's, and the time in full. */
public final class Stamp {
    /** The protocol's version, told with every message. */
    public static final String VERSION = "5.5";

    private final String session = UUID.randomUUID().toString();
    private final Clock clock = Clock.systemUTC();

    /** The first message of a conversation. */
    Message request(String type, ObjectNode content, ObjectNode metadata) {
        return new Message(List.of(), header(type), Json.object(), metadata, content, List.of());
    }

    /** A message for a client that asked something, over the envelope in which its request came. */
    public Message reply(Message request, String type, ObjectNode content, ObjectNode metadata) {
        return new Message(request.envelope(), header(type), request.header(), metadata, content, List.of());
    }

    /**
     * A message for everybody.
     *
     * @param topic what a client must have subscribed to
     * @param parent header of the message that led to it
     */
    public Message broadcast(String topic, ObjectNode parent, String type, ObjectNode content, ObjectNode metadata) {
        byte[] bytes = topic.getBytes(StandardCharsets.UTF_8);
        return new Message(List.of(bytes), header(type), parent, metadata, content, List.of());
    }

    private ObjectNode header(String type) {
        return Json.object()
                .put("msg_id", UUID.randomUUID().toString())
                .put("session", session)
                .put("username", "bandwright")
                .put("date", Instant.now(clock).truncatedTo(ChronoUnit.MICROS).toString())
                .put("msg_type", type)
                .put("version", VERSION);
    }
}
