// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.install;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import com.fasterxml.jackson.databind.node.ObjectNode;

import bandwright.kernel.cell.CellLanguages;
import bandwright.kernel.cell.java.JavaCells;
import bandwright.kernel.files.ExportFolder;
import bandwright.kernel.protocol.Channel;
import bandwright.kernel.protocol.Client;
import bandwright.kernel.protocol.Connection;
import bandwright.kernel.protocol.ConnectionFault;
import bandwright.kernel.protocol.Json;
import bandwright.kernel.session.History;
import bandwright.kernel.session.Kernel;

/** Goes once through what a kernel does in its first minute, with a client in the same process. */
public final class Rehearsal {
    private static final int PATIENCE_MS = 30_000;

    private static final List<String> CELLS = List.of(
            """
            breadth = 5 mm between 4 mm and 6 mm
            profile dome = court(width: breadth, height: 2 mm)
            profile floor = flat(width: 2 mm, height: 1 mm)
            band shank { finger ISO 57  profile dome  metal silver-925 }
            """,
            "show ring",
            "show weights\nshow section at 0 deg\nrequire weight(ring) < 20 g\nexplain weight(ring)",
            "vary breadth over 4 mm, 5 mm { weight(ring) }",
            "wall(shank)",
            "java\nSystem.out.println(design.get(\"breadth\"));\nint twice(int x) { return 2 * x; }\ntwice(21)");

    private static final String SLIP = "breadth = 2 g +";

    private Rehearsal() {}

    /** Whether every request got its answer, and every cell came out as it should. */
    public static boolean run() {
        try {
            Connection connection = Connection.onFreePorts("rehearsal");
            try (CellLanguages languages = new CellLanguages(List.of(new JavaCells()));
                    Kernel kernel = Kernel.start(
                            connection, languages, new History(), Map.of(), new ExportFolder(Path.of("")), line -> {});
                    Client client = new Client(connection)) {
                boolean all = ask(client, Channel.SHELL, "kernel_info_request", Json.object());
                for (String cell : CELLS) {
                    all &= run(client, cell, "ok");
                }
                all &= run(client, SLIP, "error");
                all &= ask(
                        client,
                        Channel.SHELL,
                        "complete_request",
                        code("show wei").put("cursor_pos", 8));
                all &= ask(
                        client,
                        Channel.SHELL,
                        "inspect_request",
                        code("silver-925").put("cursor_pos", 3));
                all &= ask(client, Channel.SHELL, "is_complete_request", code("band shank {"));
                all &= ask(client, Channel.CONTROL, "interrupt_request", Json.object());
                all &= ask(
                        client,
                        Channel.CONTROL,
                        "shutdown_request",
                        Json.object().put("restart", false));
                kernel.awaitEnd();
                return all;
            }
        } catch (IOException | ConnectionFault | InterruptedException failure) {
            return false;
        }
    }

    private static boolean run(Client client, String cell, String status) {
        client.send(Channel.SHELL, "execute_request", code(cell));
        return client.message(Channel.SHELL, PATIENCE_MS)
                .filter(reply -> reply.content().path("status").asText().equals(status))
                .isPresent();
    }

    private static ObjectNode code(String text) {
        return Json.object().put("code", text);
    }

    private static boolean ask(Client client, Channel channel, String type, ObjectNode content) {
        client.send(channel, type, content);
        return client.message(channel, PATIENCE_MS).isPresent();
    }
}
