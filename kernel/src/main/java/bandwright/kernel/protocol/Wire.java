// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.protocol;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import com.fasterxml.jackson.databind.node.ObjectNode;

/** Messages as the frames that travel: envelope, a delimiter, signature, four parts of JSON, buffers. */
final class Wire {
    private static final byte[] DELIMITER = "<IDS|MSG>".getBytes(StandardCharsets.US_ASCII);
    /** Routers put one frame each in front; more than a few is no honest message. */
    private static final int LONGEST_ENVELOPE = 16;

    private static final int PARTS = 4;

    private final Signature signature;
    private final Replays replays = new Replays();

    Wire(Signature signature) {
        this.signature = signature;
    }

    Message read(List<byte[]> frames) throws MalformedMessage {
        int delimiter = delimiter(frames);
        int first = delimiter + 2;
        if (frames.size() < first + PARTS) {
            throw new MalformedMessage("a message of " + frames.size() + " frames, which is too few");
        }
        List<byte[]> parts = frames.subList(first, first + PARTS);
        byte[] signed = frames.get(delimiter + 1);
        if (!signature.fits(signed, parts)) {
            throw new MalformedMessage("a message with a wrong signature");
        }
        // Without signatures anybody can send anything, and two equal messages prove nothing.
        if (signature.signs() && !replays.isFirst(signed)) {
            throw new MalformedMessage("a message that came before");
        }
        ObjectNode header = Json.parse(parts.get(0));
        if (!header.path("msg_id").isTextual() || !header.path("msg_type").isTextual()) {
            throw new MalformedMessage("a header without id or type");
        }
        return new Message(
                frames.subList(0, delimiter),
                header,
                Json.parse(parts.get(1)),
                Json.parse(parts.get(2)),
                Json.parse(parts.get(3)),
                frames.subList(first + PARTS, frames.size()));
    }

    private static int delimiter(List<byte[]> frames) throws MalformedMessage {
        for (int at = 0; at < Math.min(frames.size(), LONGEST_ENVELOPE + 1); at++) {
            if (Arrays.equals(frames.get(at), DELIMITER)) {
                return at;
            }
        }
        throw new MalformedMessage("frames without a delimiter");
    }

    List<byte[]> write(Message message) {
        List<byte[]> parts = List.of(
                Json.bytes(message.header()),
                Json.bytes(message.parent()),
                Json.bytes(message.metadata()),
                Json.bytes(message.content()));
        List<byte[]> frames = new ArrayList<>(message.envelope());
        frames.add(DELIMITER);
        frames.add(signature.sign(parts));
        frames.addAll(parts);
        frames.addAll(message.buffers());
        return frames;
    }
}
