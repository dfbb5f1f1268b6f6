// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.server;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;

/**
 * News for all pages that listen, as server-sent events (WHATWG HTML, 9.2). A page that does not keep up is let go; it asks again by itself and
 * then looks afresh.
 */
public final class Events implements AutoCloseable {
    /** Each holds a thread; a browser has few of them. */
    static final int MOST_LISTENERS = 12;

    private static final int MOST_WAITING = 500;

    /** A comment now and then shows whether the page is still there. */
    private static final long BREATH_SECONDS = 15;

    private static final String END = "";

    private final List<BlockingQueue<String>> listeners = new CopyOnWriteArrayList<>();

    /** @param json on one line */
    public void tell(String json) {
        String news = "data: " + json.replace("\n", " ") + "\n\n";
        for (BlockingQueue<String> listener : listeners) {
            if (!listener.offer(news)) {
                listener.clear();
                listener.offer(END);
            }
        }
    }

    /** A place among those who listen; nothing if all are taken. Who has one must {@link #leave}. */
    Optional<BlockingQueue<String>> join() {
        synchronized (listeners) {
            if (listeners.size() >= MOST_LISTENERS) {
                return Optional.empty();
            }
            BlockingQueue<String> news = new ArrayBlockingQueue<>(MOST_WAITING);
            listeners.add(news);
            return Optional.of(news);
        }
    }

    void leave(BlockingQueue<String> news) {
        // By what it is: two that are empty are not the same.
        listeners.removeIf(each -> each == news);
    }

    int listening() {
        return listeners.size();
    }

    /** Tells one page the news until it leaves. */
    void stream(BlockingQueue<String> news, Piece page) throws IOException {
        try {
            write(page, ": welcome\n\n");
            while (true) {
                String next = news.poll(BREATH_SECONDS, TimeUnit.SECONDS);
                if (next != null && next.equals(END)) {
                    return;
                }
                write(page, next == null ? ": still here\n\n" : next);
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    private static void write(Piece page, String text) throws IOException {
        page.send(text.getBytes(StandardCharsets.UTF_8));
    }

    /** Brings a piece to the page. */
    @FunctionalInterface
    interface Piece {
        void send(byte[] bytes) throws IOException;
    }

    @Override
    public void close() {
        for (BlockingQueue<String> listener : listeners) {
            listener.clear();
            listener.offer(END);
        }
    }
}
