// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.server;

import java.io.IOException;
import java.time.Duration;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Ends writing to a browser that takes nothing. The JDK's server would wait for it for good, and each such browser would hold a thread. An
 * interrupt closes the connection that a thread is writing to (see {@link java.nio.channels.InterruptibleChannel}).
 */
final class Patience implements AutoCloseable {
    private final long longestNanos;
    private final Map<Thread, Long> writing = new ConcurrentHashMap<>();
    private final Thread watch;

    /** @param longest that one piece may take to be written */
    Patience(Duration longest) {
        longestNanos = longest.toNanos();
        long step = Math.max(1, longest.toMillis() / 4);
        watch = new Thread(() -> watch(step), "patience");
        watch.setDaemon(true);
        watch.start();
    }

    private void watch(long stepMillis) {
        try {
            while (true) {
                Thread.sleep(stepMillis);
                look();
            }
        } catch (InterruptedException closed) {
            Thread.currentThread().interrupt();
        }
    }

    /** What writes, once. */
    @FunctionalInterface
    interface Writing {
        void write() throws IOException;
    }

    void write(Writing piece) throws IOException {
        Thread thread = Thread.currentThread();
        writing.put(thread, System.nanoTime());
        try {
            piece.write();
        } finally {
            // While it is looked at, nobody is taken out: no interrupt comes too late and meets the thread at something
            // else.
            synchronized (writing) {
                writing.remove(thread);
            }
        }
    }

    private void look() {
        synchronized (writing) {
            writing.forEach((thread, since) -> {
                if (System.nanoTime() - since > longestNanos) {
                    thread.interrupt();
                }
            });
        }
    }

    @Override
    public void close() {
        watch.interrupt();
    }
}
