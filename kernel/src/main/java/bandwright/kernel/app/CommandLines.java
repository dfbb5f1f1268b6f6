// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.app;

import java.io.PrintWriter;

import picocli.CommandLine;

/** Runs a command line against given streams. */
final class CommandLines {
    private CommandLines() {}

    /** The exit code, see {@link ExitCode}. */
    static int run(Terminal terminal, String... arguments) {
        CommandLine line = of(terminal);
        int exitCode = line.execute(arguments);
        terminal.flush();
        return exitCode;
    }

    static CommandLine of(Terminal terminal) {
        return new CommandLine(new Verbs(terminal))
                .setOut(terminal.out())
                .setErr(terminal.err())
                .setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF))
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setExpandAtFiles(false)
                .setParameterExceptionHandler(CommandLines::complain)
                .setExecutionExceptionHandler((failure, command, parsed) -> {
                    terminal.complain("bandwright: the program failed; this is a fault of ours: " + failure);
                    return ExitCode.ERROR;
                });
    }

    /** One sentence and where to read on; the whole help would push the sentence off the screen. */
    private static int complain(CommandLine.ParameterException failure, String[] arguments) {
        CommandLine command = failure.getCommandLine();
        PrintWriter err = command.getErr();
        if (arguments.length == 0) {
            command.usage(err);
            return ExitCode.USAGE;
        }
        err.print("bandwright: " + failure.getMessage() + "\n");
        err.print("Try '" + command.getCommandSpec().qualifiedName() + " --help'.\n");
        err.flush();
        return ExitCode.USAGE;
    }
}
