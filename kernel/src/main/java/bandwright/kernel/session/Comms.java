// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.session;

import java.util.LinkedHashMap;
import java.util.Map;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

import bandwright.kernel.protocol.Json;

/** The comms that are open. For the thread that answers shell alone. */
final class Comms {
    private final Map<String, CommTarget> targets;
    private final Map<String, Comm> open = new LinkedHashMap<>();

    Comms(Map<String, CommTarget> targets) {
        this.targets = Map.copyOf(targets);
    }

    void info(Exchange exchange) {
        String wanted = exchange.content().path("target_name").asText("");
        ObjectNode reply = Exchange.ok();
        ObjectNode comms = reply.putObject("comms");
        open.forEach((id, comm) -> {
            if (wanted.isEmpty() || wanted.equals(comm.targetName())) {
                comms.putObject(id).put("target_name", comm.targetName());
            }
        });
        exchange.reply(reply);
    }

    /** One to a target that nobody knows is closed at once, as the protocol wants it. */
    void open(Exchange exchange) throws BadRequest {
        String id = exchange.text("comm_id");
        String name = exchange.text("target_name");
        CommTarget target = targets.get(name);
        if (target == null) {
            ObjectNode content = Json.object().put("comm_id", id);
            content.putObject("data");
            exchange.publish("comm_close", content);
            return;
        }
        Comm comm = new Comm(id, name, target, exchange);
        open.put(id, comm);
        target.opened(comm, data(exchange));
    }

    /** One to a comm that is not open is passed over. */
    void message(Exchange exchange) throws BadRequest {
        Comm comm = open.get(exchange.text("comm_id"));
        if (comm != null) {
            comm.answers(exchange);
            comm.target().heard(comm, data(exchange));
        }
    }

    void close(Exchange exchange) throws BadRequest {
        Comm comm = open.remove(exchange.text("comm_id"));
        if (comm != null) {
            comm.answers(exchange);
            comm.target().closed(comm, data(exchange));
        }
    }

    private static ObjectNode data(Exchange exchange) {
        JsonNode data = exchange.content().path("data");
        return data instanceof ObjectNode object ? object : Json.object();
    }
}
