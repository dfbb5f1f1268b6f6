// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.session;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** Tells what was executed: the last, those from one number to another, or those that look like a pattern. */
final class HistoryRequests implements Handler {
    private final History history;

    HistoryRequests(History history) {
        this.history = history;
    }

    @Override
    public void handle(Exchange exchange) throws BadRequest {
        JsonNode asked = exchange.content();
        String access = exchange.text("hist_access_type");
        List<History.Entry> found = switch (access) {
            case "tail" -> last(history.entries(), asked);
            case "range" -> range(asked);
            case "search" -> last(search(asked), asked);
            default -> throw new BadRequest("history_request with hist_access_type '" + access + "'");
        };
        boolean output = asked.path("output").asBoolean(false);
        ObjectNode reply = Exchange.ok();
        ArrayNode lines = reply.putArray("history");
        for (History.Entry entry : found) {
            ArrayNode line = lines.addArray().add(entry.session()).add(entry.line());
            if (output) {
                line.addArray().add(entry.input()).add(entry.output());
            } else {
                line.add(entry.input());
            }
        }
        exchange.reply(reply);
    }

    private static List<History.Entry> last(List<History.Entry> entries, JsonNode asked) {
        int count = asked.path("n").isInt() ? Math.max(0, asked.path("n").asInt()) : entries.size();
        return entries.subList(Math.max(0, entries.size() - count), entries.size());
    }

    /** From {@code start} on, without {@code stop}; session 0 is this one, those below count back from it. */
    private List<History.Entry> range(JsonNode asked) {
        int given = asked.path("session").asInt(0);
        int session = given > 0 ? given : history.session() + given;
        int start = asked.path("start").asInt(0);
        int stop = asked.path("stop").isInt() ? asked.path("stop").asInt() : Integer.MAX_VALUE;
        return history.entries().stream()
                .filter(entry -> entry.session() == session && entry.line() >= start && entry.line() < stop)
                .toList();
    }

    private List<History.Entry> search(JsonNode asked) {
        String glob = asked.path("pattern").asText("*");
        List<History.Entry> found = history.entries().stream()
                .filter(entry -> matches(glob, entry.input()))
                .toList();
        if (!asked.path("unique").asBoolean(false)) {
            return found;
        }
        Map<String, History.Entry> latest = new LinkedHashMap<>();
        for (History.Entry entry : found) {
            latest.remove(entry.input());
            latest.put(entry.input(), entry);
        }
        return List.copyOf(latest.values());
    }

    /** As file names are matched: {@code *} stands for any text, {@code ?} for a sign; it must be all of the input. */
    static boolean matches(String glob, String input) {
        int in = 0;
        int at = 0;
        int star = -1;
        int starIn = 0;
        while (in < input.length()) {
            if (at < glob.length() && glob.charAt(at) == '*') {
                star = at++;
                starIn = in;
            } else if (at < glob.length() && (glob.charAt(at) == '?' || glob.charAt(at) == input.charAt(in))) {
                at++;
                in++;
            } else if (star >= 0) {
                // The last star takes one sign more.
                at = star + 1;
                in = ++starIn;
            } else {
                return false;
            }
        }
        while (at < glob.length() && glob.charAt(at) == '*') {
            at++;
        }
        return at == glob.length();
    }
}
