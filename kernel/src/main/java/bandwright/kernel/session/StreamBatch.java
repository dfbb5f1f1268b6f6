// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.session;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeUnit;

import bandwright.kernel.notebook.Output;

/** Gathers pieces of text and sends them together: a cell that prints a thousand lines sends a few messages. */
final class StreamBatch {
    private static final int LARGEST = 16_384;
    private static final Executor LATER = CompletableFuture.delayedExecutor(100, TimeUnit.MILLISECONDS);

    private final Exchange exchange;
    private final StringBuilder text = new StringBuilder();
    private Output.Channel channel = Output.Channel.STDOUT;

    StreamBatch(Exchange exchange) {
        this.exchange = exchange;
    }

    synchronized void write(Output.Channel to, String piece) {
        if (piece.isEmpty()) {
            return;
        }
        if (to != channel) {
            flush();
            channel = to;
        }
        if (text.isEmpty()) {
            LATER.execute(this::flush);
        }
        text.append(piece);
        if (text.length() >= LARGEST) {
            flush();
        }
    }

    synchronized void flush() {
        if (!text.isEmpty()) {
            exchange.publish("stream", OutputMessages.stream(channel, text.toString()));
            text.setLength(0);
        }
    }
}
