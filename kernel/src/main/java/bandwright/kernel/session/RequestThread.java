// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.session;

import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.function.Consumer;

import bandwright.kernel.protocol.Message;

/** Requests that wait, and the thread that answers them in their order. */
final class RequestThread {
    private static final String EXECUTE = "execute_request";

    private final BlockingQueue<Message> waiting = new LinkedBlockingQueue<>();
    private final Set<Message> aborted =
            Collections.synchronizedSet(Collections.newSetFromMap(new IdentityHashMap<>()));
    private final Thread thread;

    /** @param handler must not throw */
    RequestThread(String name, Consumer<Message> handler) {
        this.thread = new Thread(() -> run(handler), name);
        thread.setDaemon(true);
    }

    void start() {
        thread.start();
    }

    void add(Message message) {
        waiting.add(message);
    }

    /** Marks all requests to execute that wait now. Those that come later are none of its business. */
    void abortWaiting() {
        List.copyOf(waiting).stream()
                .filter(message -> message.type().equals(EXECUTE))
                .forEach(aborted::add);
    }

    /** Whether a message was marked; asked once for each. */
    boolean isAborted(Message message) {
        return aborted.remove(message);
    }

    void end() {
        thread.interrupt();
    }

    private void run(Consumer<Message> handler) {
        try {
            while (true) {
                handler.accept(waiting.take());
            }
        } catch (InterruptedException ended) {
            return;
        }
    }
}
