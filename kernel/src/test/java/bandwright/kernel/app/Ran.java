// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.app;

import java.io.PrintWriter;
import java.io.StringWriter;

/** A command line run against streams in memory. */
public record Ran(int exitCode, String out, String err) {
    public static Ran command(Object... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        Terminal terminal = new Terminal(new PrintWriter(out), new PrintWriter(err), false);
        String[] words = new String[arguments.length];
        for (int at = 0; at < words.length; at++) {
            words[at] = String.valueOf(arguments[at]);
        }
        int exitCode = CommandLines.run(terminal, words);
        return new Ran(exitCode, out.toString(), err.toString());
    }
}
