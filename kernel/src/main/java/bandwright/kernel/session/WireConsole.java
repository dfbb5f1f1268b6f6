// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.session;

import java.util.Map;
import java.util.Optional;
import java.util.UUID;

import com.fasterxml.jackson.databind.node.ObjectNode;

import bandwright.kernel.cell.CellConsole;
import bandwright.kernel.notebook.Output;
import bandwright.kernel.protocol.Json;

/** What a running cell shows, on its way to the clients. Closed when the cell's outcome is there or no longer awaited. */
final class WireConsole implements CellConsole, AutoCloseable {
    /** Work that is done sooner needs no word about how far it is. */
    private static final long FIRST_WORD_NS = 500_000_000L;

    private static final long BETWEEN_WORDS_NS = 250_000_000L;

    private final Exchange exchange;
    private final Input input;
    private final ExecuteRequest request;
    private final StreamBatch streams;
    private final long start = System.nanoTime();
    private final String progressId = "progress-" + UUID.randomUUID();
    private long lastWord;
    private boolean progressShown;
    private boolean closed;

    WireConsole(Exchange exchange, Input input, ExecuteRequest request) {
        this.exchange = exchange;
        this.input = input;
        this.request = request;
        this.streams = new StreamBatch(exchange);
    }

    private boolean isMute() {
        return closed || request.silent();
    }

    @Override
    public synchronized void working(int done, int total) {
        long now = System.nanoTime();
        if (now - start < FIRST_WORD_NS || (progressShown && now - lastWord < BETWEEN_WORDS_NS)) {
            return;
        }
        lastWord = now;
        Output.Display words = new Output.Display(Map.of("text/plain", done + " of " + total + " variants"));
        if (progressShown) {
            update(progressId, words);
        } else {
            show(progressId, words);
        }
        progressShown = true;
    }

    /** @param wait whether something else will be shown in its place */
    synchronized void clearProgress(boolean wait) {
        if (progressShown) {
            clear(wait);
        }
    }

    @Override
    public synchronized void write(Output.Channel channel, String text) {
        if (!isMute()) {
            streams.write(channel, text);
        }
    }

    @Override
    public synchronized void show(Output.Display display) {
        send("display_data", display, Json.object());
    }

    @Override
    public synchronized void show(String displayId, Output.Display display) {
        send("display_data", display, Json.object().put("display_id", displayId));
    }

    @Override
    public synchronized void update(String displayId, Output.Display display) {
        send("update_display_data", display, Json.object().put("display_id", displayId));
    }

    private void send(String type, Output.Display display, ObjectNode transients) {
        if (!isMute()) {
            streams.flush();
            ObjectNode content = OutputMessages.display(display);
            content.set("transient", transients);
            exchange.publish(type, content);
        }
    }

    @Override
    public synchronized void clear(boolean wait) {
        if (!isMute()) {
            streams.flush();
            exchange.publish("clear_output", Json.object().put("wait", wait));
        }
    }

    @Override
    public Optional<String> ask(String prompt, boolean hidden) {
        synchronized (this) {
            if (closed || !request.allowsInput()) {
                return Optional.empty();
            }
            streams.flush();
        }
        return input.ask(exchange, prompt, hidden);
    }

    @Override
    public synchronized void close() {
        streams.flush();
        closed = true;
    }
}
