// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.session;

import java.util.Locale;

import com.fasterxml.jackson.databind.node.ObjectNode;

import bandwright.kernel.notebook.Output;
import bandwright.kernel.protocol.Json;

/** Outputs as the messages that show them. */
final class OutputMessages {
    private OutputMessages() {}

    static void publish(Exchange exchange, Output output) {
        if (output instanceof Output.Display display) {
            ObjectNode content = display(display);
            content.putObject("transient");
            exchange.publish("display_data", content);
        } else if (output instanceof Output.Stream stream) {
            exchange.publish("stream", stream(stream.channel(), stream.text()));
        } else if (output instanceof Output.Failure failure) {
            exchange.publish("error", error(failure));
        } else {
            throw new IllegalStateException("an output without a message: " + output);
        }
    }

    static ObjectNode display(Output.Display display) {
        ObjectNode content = Json.object();
        ObjectNode data = content.putObject("data");
        display.data().forEach(data::put);
        content.putObject("metadata");
        return content;
    }

    static ObjectNode stream(Output.Channel channel, String text) {
        return Json.object()
                .put("name", channel.name().toLowerCase(Locale.ROOT))
                .put("text", text);
    }

    static ObjectNode error(Output.Failure failure) {
        return Exchange.error(failure.name(), failure.message(), failure.traceback());
    }
}
