// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.protocol;

import java.util.List;

import com.fasterxml.jackson.databind.node.ObjectNode;

/**
 * A message.
 *
 * @param envelope who it comes from or goes to, as sockets tell it; on iopub the topic
 * @param header id, type, session, time
 * @param parent the header of the message that it answers; empty for the first of a conversation
 * @param content what is said
 * @param buffers binary parts behind the rest; they are not signed
 */
public record Message(
        List<byte[]> envelope,
        ObjectNode header,
        ObjectNode parent,
        ObjectNode metadata,
        ObjectNode content,
        List<byte[]> buffers) {
    public Message {
        envelope = List.copyOf(envelope);
        buffers = List.copyOf(buffers);
    }

    public String type() {
        return header.path("msg_type").asText();
    }
}
