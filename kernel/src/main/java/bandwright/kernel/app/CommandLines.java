// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.app;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import picocli.CommandLine;

/** Runs a command line against given streams. */
final class CommandLines {
    private CommandLines() {}

    /** The exit code, see {@link ExitCode}. */
    static int run(Terminal terminal, String... arguments) {
        if (arguments.length == 2 && arguments[0].equals("kernel") && !arguments[1].startsWith("-")) {
            // Jupyter waits for this one, and to read a command line takes longer than the rest of a start.
            return new Verbs(terminal).kernel(Path.of(arguments[1]));
        }
        CommandLine line = of(terminal);
        // Asked here because a wrong verb beside --help would only get the general help.
        Optional<String> wrong = Stream.of(arguments)
                .filter(word -> !word.startsWith("-"))
                .findFirst()
                .filter(word -> !line.getSubcommands().containsKey(word));
        if (wrong.isPresent()) {
            terminal.complain("bandwright: " + noVerb(wrong.get(), shown(line)));
            return ExitCode.USAGE;
        }
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

    /** Those that people call. */
    private static List<String> shown(CommandLine line) {
        return line.getSubcommands().entrySet().stream()
                .filter(verb -> !verb.getValue().getCommandSpec().usageMessage().hidden())
                .map(Map.Entry::getKey)
                .toList();
    }

    private static String noVerb(String word, List<String> verbs) {
        String known = "there is no verb " + word + "; the verbs are " + String.join(", ", verbs);
        boolean file = word.endsWith(".ring") || word.endsWith(".ipynb");
        return file ? known + "; did you mean 'bandwright run " + word + "'?" : known;
    }

    /** One sentence and where to read on; the whole help would push the sentence off the screen. */
    private static int complain(CommandLine.ParameterException failure, String[] arguments) {
        CommandLine command = failure.getCommandLine();
        PrintWriter err = command.getErr();
        if (arguments.length == 0) {
            command.usage(err);
            return ExitCode.USAGE;
        }
        err.print("bandwright: " + sentence(failure, arguments) + "\n");
        err.print("Try '" + command.getCommandSpec().qualifiedName() + " --help'.\n");
        err.flush();
        return ExitCode.USAGE;
    }

    private static String sentence(CommandLine.ParameterException failure, String[] arguments) {
        boolean sets = Stream.of(arguments).anyMatch(word -> word.startsWith("--set"));
        if (sets && failure instanceof CommandLine.UnmatchedArgumentException unmatched) {
            List<String> words = unmatched.getUnmatched();
            if (words.stream().noneMatch(word -> word.startsWith("-"))) {
                return "'" + String.join(" ", words) + "' is one word too many; put quotes round a value with spaces:"
                        + " --set \"finger-size=US 8\"";
            }
        }
        return String.valueOf(failure.getMessage());
    }
}
