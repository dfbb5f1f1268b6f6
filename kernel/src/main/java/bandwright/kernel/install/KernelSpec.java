// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.install;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/**
 * How Jupyter starts the kernel.
 *
 * @param java the program that runs it, as an absolute path
 * @param jar our program
 * @param heap the most memory for designs, as Java writes it: {@code 1g}
 * @param archive see {@link Archive}; need not exist
 */
record KernelSpec(Path java, Path jar, String heap, Path archive) {
    /** The folder's name, by which notebooks ask for the kernel. */
    static final String NAME = "bandwright";

    /** What goes before the verb. The same when the archive is made: an archive fits one way of starting only. */
    List<String> command() {
        return List.of(
                java.toString(),
                // Small at first: Java would take a share of the machine's memory before it tidies up.
                "-Xms32m",
                "-Xmx" + heap,
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                // Without it, a Java that cannot use an archive would say so on the screen.
                "-Xlog:disable",
                "-jar",
                jar.toString());
    }

    String json(boolean posix) {
        List<String> arguments = new ArrayList<>(command());
        arguments.add(1, "-XX:SharedArchiveFile=" + archive);
        arguments.add("kernel");
        arguments.add("{connection_file}");
        ObjectNode spec = JsonNodeFactory.instance.objectNode();
        ArrayNode argv = spec.putArray("argv");
        arguments.forEach(argv::add);
        spec.put("display_name", "Bandwright").put("language", NAME).put("interrupt_mode", "message");
        if (posix) {
            // Where the locale is plain C, Java could not read file names beyond ASCII.
            spec.putObject("env").put("LC_ALL", "C.UTF-8");
        }
        spec.putObject("metadata").put("debugger", false);
        return spec.toPrettyString() + "\n";
    }
}
