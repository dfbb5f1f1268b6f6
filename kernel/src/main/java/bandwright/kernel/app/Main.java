// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.app;

/** The command {@code bandwright}. */
public final class Main {
    private Main() {}

    public static void main(String... arguments) {
        // Nothing here draws on a screen; without this the picture classes would look for one.
        System.setProperty("java.awt.headless", "true");
        Terminal terminal = Terminal.ofProcess();
        int exitCode = CommandLines.run(terminal, arguments);
        terminal.flush();
        System.exit(exitCode);
    }
}
