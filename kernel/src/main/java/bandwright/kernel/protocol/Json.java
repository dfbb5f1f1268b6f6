// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.protocol;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** JSON on one line, as it travels. */
public final class Json {
    private static final ObjectMapper MAPPER =
            new ObjectMapper().enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS);

    private Json() {}

    /** An empty object. */
    public static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }

    /** A text as an object; a {@link MalformedMessage} if it is none. */
    public static ObjectNode parse(String text) throws MalformedMessage {
        try {
            JsonNode node = MAPPER.readTree(text);
            if (node instanceof ObjectNode object) {
                return object;
            }
            throw new MalformedMessage("JSON that is no object");
        } catch (JsonProcessingException failure) {
            throw new MalformedMessage("no JSON");
        }
    }

    static ObjectNode parse(byte[] utf8) throws MalformedMessage {
        try {
            return parse(StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(utf8))
                    .toString());
        } catch (CharacterCodingException failure) {
            throw new MalformedMessage("text that is not UTF-8");
        }
    }

    /** An object as text on one line. */
    public static String write(JsonNode node) {
        try {
            return MAPPER.writeValueAsString(node);
        } catch (JsonProcessingException failure) {
            throw new IllegalStateException("a tree can always be written", failure);
        }
    }

    // Through a text: halves of surrogate pairs, which a client may send, become question marks instead of a failure.
    static byte[] bytes(ObjectNode node) {
        return write(node).getBytes(StandardCharsets.UTF_8);
    }
}
