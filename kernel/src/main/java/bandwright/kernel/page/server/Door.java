// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.server;

import java.net.URI;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.jspecify.annotations.Nullable;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;

/**
 * Stands in front of every route. A web page of somebody else can make this machine's browser ask us anything; that a question comes from
 * this machine proves nothing. So whoever asks must name us by our own address, come from our own page or from none, and hold the cookie
 * that the link of the start was exchanged for; and what changes something needs the page's key too, which no other page can read.
 */
final class Door {
    /** A notebook of a ring with its pictures left out stays far below. */
    static final int LARGEST_BODY = 4_000_000;

    static final String KEY_HEADER = "X-Bandwright-Key";

    private static final String ENTRY = "/enter/";

    private final Secrets secrets = new Secrets();
    private final Set<String> hosts;
    private final Set<String> origins;
    private final String cookieName;
    private final String cookie = secrets.fresh();
    private final String key = secrets.fresh();
    private final Object lock = new Object();
    private String ticket = secrets.fresh();

    Door(int port) {
        hosts = Set.of("127.0.0.1:" + port, "localhost:" + port);
        origins = Set.of("http://127.0.0.1:" + port, "http://localhost:" + port);
        // Browsers keep cookies by host alone, whatever the port: two servers must not take each other's.
        cookieName = "bandwright-" + port;
    }

    /** The path that lets a browser in, once. */
    String entry() {
        synchronized (lock) {
            return ENTRY + ticket;
        }
    }

    String key() {
        return key;
    }

    /** A new word for one page's own scripts and styles. */
    String nonce() {
        return secrets.fresh();
    }

    /** What a question is refused with; nothing if it may come in. The headers that guard every answer are set either way. */
    Optional<Reply> refusal(HttpExchange exchange, boolean changes) {
        Headers asked = exchange.getRequestHeaders();
        if (!isOne(asked.get("Host"), hosts)) {
            return Optional.of(Reply.words(403, "This address is not the one this server was started at."));
        }
        List<String> origin = asked.get("Origin");
        if (origin != null && !isOne(origin, origins)) {
            return Optional.of(Reply.words(403, "Another page may not ask this server."));
        }
        String site = asked.getFirst("Sec-Fetch-Site");
        if (site != null && !site.equals("same-origin") && !site.equals("none")) {
            return Optional.of(Reply.words(403, "Another page may not ask this server."));
        }
        if (!holdsCookie(asked.get("Cookie"))) {
            return Optional.of(
                    Reply.words(
                            403,
                            "Open the link that was printed in the terminal; each lets one browser in, and the next stands below it."));
        }
        String method = exchange.getRequestMethod();
        if (!method.equals(changes ? "POST" : "GET")) {
            return Optional.of(Reply.words(405, changes ? "This is asked by POST." : "This is asked by GET."));
        }
        if (changes) {
            String type = asked.getFirst("Content-Type");
            String given = asked.getFirst(KEY_HEADER);
            if (type == null || !type.equals("application/json")) {
                return Optional.of(Reply.words(415, "Only JSON is read here."));
            }
            if (given == null || !Secrets.same(key, given)) {
                return Optional.of(Reply.words(403, "The page is of an earlier start: load it again."));
            }
        }
        return Optional.empty();
    }

    /** Exchanges a ticket for the cookie; then the ticket is used up. False if the path is none, or not the one that counts. What goes back is a 303 with the headers set here. */
    boolean enters(HttpExchange exchange) {
        URI asked = exchange.getRequestURI();
        if (!asked.getRawPath().startsWith(ENTRY)
                || !exchange.getRequestMethod().equals("GET")
                || !isOne(exchange.getRequestHeaders().get("Host"), hosts)) {
            return false;
        }
        synchronized (lock) {
            if (!Secrets.same(ENTRY + ticket, asked.getRawPath())) {
                return false;
            }
            ticket = secrets.fresh();
        }
        exchange.getResponseHeaders()
                .set("Set-Cookie", cookieName + "=" + cookie + "; HttpOnly; SameSite=Strict; Path=/");
        // Away with the ticket from the address bar; where to is fixed.
        exchange.getResponseHeaders().set("Location", "/");
        return true;
    }

    /** The answer's headers: nothing from elsewhere is loaded, nothing is kept, nothing frames it. */
    static void guard(Headers answer, String nonce) {
        answer.set(
                "Content-Security-Policy",
                "default-src 'none'; script-src 'self' 'nonce-" + nonce + "'; style-src 'self' 'nonce-" + nonce
                        + "'; img-src 'self' data: blob:; connect-src 'self' blob:; base-uri 'none'; form-action 'none';"
                        + " frame-ancestors 'none'");
        answer.set("X-Content-Type-Options", "nosniff");
        answer.set("Referrer-Policy", "no-referrer");
        answer.set("Cross-Origin-Opener-Policy", "same-origin");
        answer.set("Cross-Origin-Resource-Policy", "same-origin");
        answer.set("Cache-Control", "no-store");
    }

    private static boolean isOne(@Nullable List<String> given, Set<String> allowed) {
        return given != null && given.size() == 1 && allowed.contains(given.get(0));
    }

    private boolean holdsCookie(@Nullable List<String> headers) {
        if (headers == null) {
            return false;
        }
        for (String header : headers) {
            for (String pair : header.split(";", -1)) {
                String[] both = pair.strip().split("=", 2);
                if (both.length == 2 && both[0].equals(cookieName) && Secrets.same(cookie, both[1])) {
                    return true;
                }
            }
        }
        return false;
    }
}
