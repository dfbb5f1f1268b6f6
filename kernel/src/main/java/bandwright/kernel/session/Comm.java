// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.session;

import com.fasterxml.jackson.databind.node.ObjectNode;

import bandwright.kernel.protocol.Json;

/** A line between a piece of a front end and a piece of the kernel. */
public final class Comm {
    private final String id;
    private final String targetName;
    private final CommTarget target;
    private Exchange present;

    Comm(String id, String targetName, CommTarget target, Exchange opened) {
        this.id = id;
        this.targetName = targetName;
        this.target = target;
        this.present = opened;
    }

    /** Sends to the other end. */
    public void send(ObjectNode data) {
        ObjectNode content = Json.object().put("comm_id", id);
        content.set("data", data);
        present.publish("comm_msg", content);
    }

    String targetName() {
        return targetName;
    }

    CommTarget target() {
        return target;
    }

    /** What is sent from now on answers that message. */
    void answers(Exchange exchange) {
        present = exchange;
    }
}
