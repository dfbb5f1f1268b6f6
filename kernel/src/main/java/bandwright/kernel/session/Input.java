// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.session;

import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;

import bandwright.kernel.protocol.Json;
import bandwright.kernel.protocol.Message;

/** Questions to the user, and what comes back. */
final class Input {
    private final BlockingQueue<String> answers = new LinkedBlockingQueue<>();

    /** A message on stdin came in. */
    void answered(Message message) {
        if (message.type().equals("input_reply")) {
            answers.add(message.content().path("value").asText());
        }
    }

    /** Asks and waits; nothing if the thread is interrupted meanwhile. */
    Optional<String> ask(Exchange exchange, String prompt, boolean hidden) {
        // An answer to a question that nobody waits for any more is no answer to this one.
        answers.clear();
        exchange.ask(Json.object().put("prompt", prompt).put("password", hidden));
        try {
            return Optional.of(answers.take());
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return Optional.empty();
        }
    }
}
