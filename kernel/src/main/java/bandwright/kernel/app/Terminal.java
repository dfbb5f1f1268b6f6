// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.app;

import java.io.Console;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Map;

import org.jspecify.annotations.Nullable;

/**
 * Where a command writes. Lines end with {@code \n} and are UTF-8, whatever the machine's own habits.
 *
 * @param redraws whether a person sees the output on a screen whose last line can be drawn again
 */
record Terminal(PrintWriter out, PrintWriter err, boolean redraws) {

    static Terminal ofProcess() {
        return new Terminal(writer(FileDescriptor.out), writer(FileDescriptor.err), redraws(System.getenv()));
    }

    /** A line, flushed at once so that the two channels stay in order. */
    void say(String text) {
        out.print(text + "\n");
        out.flush();
    }

    /** A line about trouble. */
    void complain(String text) {
        err.print(text + "\n");
        err.flush();
    }

    void flush() {
        out.flush();
        err.flush();
    }

    private static boolean redraws(Map<String, String> environment) {
        String kind = environment.getOrDefault("TERM", "dumb");
        return isInteractive(System.console()) && !environment.containsKey("CI") && !kind.equals("dumb");
    }

    /** From Java 22 on there is a console even where there is no terminal; only there can it be asked. */
    private static boolean isInteractive(@Nullable Console console) {
        if (console == null) {
            return false;
        }
        try {
            return Boolean.TRUE.equals(Console.class.getMethod("isTerminal").invoke(console));
        } catch (ReflectiveOperationException olderJava) {
            return true;
        }
    }

    private static PrintWriter writer(FileDescriptor descriptor) {
        return new PrintWriter(new FileOutputStream(descriptor), false, StandardCharsets.UTF_8);
    }
}
