// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.session;

import com.fasterxml.jackson.databind.node.ObjectNode;

import bandwright.kernel.protocol.Stamp;

/** Who this kernel is. */
final class KernelInfo {
    private static final String NAME = "bandwright";

    private KernelInfo() {}

    static void answer(Exchange exchange) {
        String packaged = KernelInfo.class.getPackage().getImplementationVersion();
        String version = packaged == null ? "0" : packaged;
        ObjectNode info = Exchange.ok()
                .put("protocol_version", Stamp.VERSION)
                .put("implementation", NAME)
                .put("implementation_version", version)
                .put("banner", "Bandwright " + version + ": rings as short, readable texts that compute")
                .put("debugger", false);
        info.putObject("language_info")
                .put("name", NAME)
                .put("version", version)
                .put("mimetype", "text/x-bandwright")
                .put("file_extension", ".ring")
                .put("pygments_lexer", "text");
        info.putArray("help_links");
        info.putArray("supported_features");
        exchange.reply(info);
    }
}
