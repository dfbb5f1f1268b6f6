// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.server;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;

/** Serves routes to a browser on this machine, and to nobody else. */
public final class LocalServer implements AutoCloseable {
    /** Where pages listen for news. */
    private static final String EVENTS = "/events";

    /** More than can listen, so that those who ask are answered. */
    private static final int THREADS = 2 * Events.MOST_LISTENERS;

    /** For one piece; the largest is a model or a handout of some megabytes, on the same machine. */
    private static final Duration LONGEST_WRITING = Duration.ofSeconds(20);

    private final HttpServer server;
    private final ThreadPoolExecutor threads;
    private final Door door;
    private final Map<String, Route> routes;
    private final Events events;
    private final Consumer<String> newLink;
    private final Patience patience;

    private LocalServer(
            HttpServer server, Map<String, Route> routes, Events events, Consumer<String> newLink, Duration longest) {
        patience = new Patience(longest);
        this.server = server;
        this.routes = Map.copyOf(new LinkedHashMap<>(routes));
        this.events = events;
        this.newLink = newLink;
        door = new Door(server.getAddress().getPort());
        threads =
                new ThreadPoolExecutor(THREADS, THREADS, 30, TimeUnit.SECONDS, new ArrayBlockingQueue<>(200), work -> {
                    Thread thread = new Thread(work, "page");
                    thread.setDaemon(true);
                    return thread;
                });
    }

    /**
     * Starts it. The JDK's server reads its switches once, when the first is made: without them an answer waits for the network's
     * acknowledgement (some 40 ms), and a browser that never ends its question holds a thread for good.
     *
     * @param port 0 takes any that is free
     * @param newLink hears each link that lets one browser in: one at the start, another whenever one was used
     */
    public static LocalServer start(int port, Map<String, Route> routes, Events events, Consumer<String> newLink)
            throws IOException {
        return start(port, routes, events, newLink, LONGEST_WRITING);
    }

    /** @param longest that a piece may take on its way to a browser, before it is let go */
    static LocalServer start(
            int port, Map<String, Route> routes, Events events, Consumer<String> newLink, Duration longest)
            throws IOException {
        System.setProperty("sun.net.httpserver.nodelay", "true");
        System.setProperty("sun.net.httpserver.maxReqTime", "20");
        System.setProperty("sun.net.httpserver.maxReqHeaders", "60");
        HttpServer http = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), port), 0);
        LocalServer server = new LocalServer(http, routes, events, newLink, longest);
        http.setExecutor(server.threads);
        http.createContext("/", server::answer);
        http.start();
        newLink.accept(server.link());
        return server;
    }

    public int port() {
        return server.getAddress().getPort();
    }

    /** Lets one browser in. */
    public String link() {
        return "http://127.0.0.1:" + port() + door.entry();
    }

    private void answer(HttpExchange exchange) throws IOException {
        try (exchange) {
            String nonce = door.nonce();
            Door.guard(exchange.getResponseHeaders(), nonce);
            if (door.enters(exchange)) {
                // Said first: whoever has entered can hand on the next link.
                newLink.accept(link());
                exchange.sendResponseHeaders(303, -1);
                return;
            }
            String path = exchange.getRequestURI().getRawPath();
            Route route = routes.get(path);
            boolean listens = path.equals(EVENTS);
            Optional<Reply> refusal = door.refusal(exchange, route != null && route.changes());
            if (refusal.isPresent()) {
                send(exchange, refusal.get());
            } else if (listens) {
                listen(exchange);
            } else if (route == null) {
                send(exchange, Reply.words(404, "There is nothing here."));
            } else {
                serve(exchange, route, nonce);
            }
        }
    }

    private void serve(HttpExchange exchange, Route route, String nonce) throws IOException {
        byte[] body = new byte[0];
        if (route.changes()) {
            try (InputStream stream = exchange.getRequestBody()) {
                body = stream.readNBytes(Door.LARGEST_BODY + 1);
            }
            if (body.length > Door.LARGEST_BODY) {
                send(exchange, Reply.words(413, "This is larger than 4 MB."));
                return;
            }
        }
        Reply reply;
        try {
            reply = route.work().apply(new Request(body, nonce, door.key()));
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError failure) {
            // What it was is no business of a page; what the user typed is safe where it was.
            reply = Reply.words(500, "The program failed at this; it is a fault of ours.");
        }
        send(exchange, reply);
    }

    private void send(HttpExchange exchange, Reply reply) throws IOException {
        exchange.getResponseHeaders().set("Content-Type", reply.type());
        patience.write(() -> {
            exchange.sendResponseHeaders(reply.status(), reply.body().length == 0 ? -1 : reply.body().length);
            try (OutputStream stream = exchange.getResponseBody()) {
                stream.write(reply.body());
            }
        });
    }

    private void listen(HttpExchange exchange) throws IOException {
        BlockingQueue<String> news = events.join().orElse(null);
        if (news == null) {
            send(exchange, Reply.words(503, "Too many pages listen; close one."));
            return;
        }
        try {
            exchange.getResponseHeaders().set("Content-Type", "text/event-stream; charset=utf-8");
            exchange.sendResponseHeaders(200, 0);
            OutputStream stream = exchange.getResponseBody();
            events.stream(
                    news,
                    bytes -> patience.write(() -> {
                        stream.write(bytes);
                        stream.flush();
                    }));
            patience.write(stream::close);
        } finally {
            events.leave(news);
        }
    }

    @Override
    public void close() {
        events.close();
        server.stop(0);
        patience.close();
        threads.shutdownNow();
    }
}
