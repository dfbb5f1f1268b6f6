// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.session;

import java.util.Locale;
import java.util.Optional;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

import bandwright.dsl.edit.Completeness;
import bandwright.dsl.edit.Completion;
import bandwright.dsl.edit.Documentation;
import bandwright.dsl.edit.Proposal;
import bandwright.dsl.source.SourceText;
import bandwright.kernel.cell.CellLanguages;

/** Helps to write a cell. Cursors count code points, here as in the protocol. */
final class Editing {
    private final CellLanguages languages;
    private final Bench bench;

    Editing(CellLanguages languages, Bench bench) {
        this.languages = languages;
        this.bench = bench;
    }

    void complete(Exchange exchange) throws BadRequest {
        SourceText text = text(exchange);
        Completion completion = languages.of(text).completion(bench.workbench(), text, cursor(exchange, text));
        int start = completion.replaced().start();
        int end = completion.replaced().end();
        ObjectNode reply = Exchange.ok().put("cursor_start", start).put("cursor_end", end);
        ArrayNode matches = reply.putArray("matches");
        ArrayNode kinds = reply.putObject("metadata").putArray("_jupyter_types_experimental");
        for (Proposal proposal : completion.proposals()) {
            matches.add(proposal.text());
            kinds.addObject()
                    .put("start", start)
                    .put("end", end)
                    .put("text", proposal.text())
                    .put("type", proposal.sort().name().toLowerCase(Locale.ROOT))
                    .put("signature", proposal.detail());
        }
        exchange.reply(reply);
    }

    void inspect(Exchange exchange) throws BadRequest {
        SourceText text = text(exchange);
        Optional<Documentation> found =
                languages.of(text).documentation(bench.workbench(), text, cursor(exchange, text));
        ObjectNode reply = Exchange.ok().put("found", found.isPresent());
        ObjectNode data = reply.putObject("data");
        found.ifPresent(documentation -> data.put("text/plain", documentation.text()));
        reply.putObject("metadata");
        exchange.reply(reply);
    }

    void isComplete(Exchange exchange) throws BadRequest {
        SourceText text = text(exchange);
        Optional<Completeness> found = languages.of(text).completeness(text);
        String word = found.map(state -> state.state().name().toLowerCase(Locale.ROOT))
                .orElse("unknown");
        ObjectNode reply = Exchange.ok().put("status", word);
        if (word.equals("incomplete")) {
            reply.put("indent", found.map(Completeness::indent).orElse(""));
        }
        exchange.reply(reply);
    }

    private static SourceText text(Exchange exchange) throws BadRequest {
        return new SourceText("this cell", exchange.text("code"));
    }

    /** Without one, the end of the text. */
    private static int cursor(Exchange exchange, SourceText text) {
        JsonNode cursor = exchange.content().path("cursor_pos");
        return cursor.isInt() ? Math.max(0, Math.min(cursor.asInt(), text.length())) : text.length();
    }
}
