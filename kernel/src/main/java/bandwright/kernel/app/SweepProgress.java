// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.app;

import java.util.Locale;

/** Tells a person how far a catalogue has come: on a screen a line drawn again and again, in a log a line now and then. */
final class SweepProgress {
    /** Nanoseconds between two lines. */
    private static final long ON_A_SCREEN = 200_000_000L;

    private static final long IN_A_LOG = 5_000_000_000L;
    private static final int WIDTH = 24;

    private final Terminal terminal;
    private final boolean quiet;
    private final long between;
    private final long started = System.nanoTime();
    private long last = started;
    private long first = -1;
    private int drawn;

    SweepProgress(Terminal terminal, boolean quiet) {
        this.terminal = terminal;
        this.quiet = quiet;
        between = terminal.redraws() ? ON_A_SCREEN : IN_A_LOG;
    }

    /** On one thread. */
    void worked(long rows, long total) {
        if (first < 0) {
            first = rows;
        }
        long now = System.nanoTime();
        if (quiet || now - last < between) {
            return;
        }
        last = now;
        String words = words(rows, total, (now - started) / 1e9, rows - first);
        if (terminal.redraws()) {
            int filled = (int) (WIDTH * rows / total);
            draw("[" + "=".repeat(filled) + " ".repeat(WIDTH - filled) + "] " + words);
        } else {
            terminal.say(words);
        }
    }

    /** {@code 12,300 of 100,000 rows, 4,800 a second, 18 s left}. */
    static String words(long rows, long total, double seconds, long since) {
        String words = String.format(Locale.ROOT, "%,d of %,d rows", rows, total);
        if (since <= 0 || !(seconds > 0)) {
            return words;
        }
        double rate = since / seconds;
        String told = rate < 10
                ? String.format(Locale.ROOT, "%.1f", rate)
                : String.format(Locale.ROOT, "%,d", Math.round(rate));
        return words + ", " + told + " a second, " + left(Math.round((total - rows) / rate)) + " left";
    }

    private static String left(long seconds) {
        if (seconds < 120) {
            return seconds + " s";
        }
        return seconds < 7200 ? seconds / 60 + " min" : String.format(Locale.ROOT, "%,d h", seconds / 3600);
    }

    /** Leaves the screen clean. */
    void end() {
        draw("");
        terminal.flush();
    }

    private void draw(String line) {
        if (drawn > 0 || !line.isEmpty()) {
            terminal.out().print("\r" + " ".repeat(drawn) + "\r" + line);
            terminal.out().flush();
            drawn = line.length();
        }
    }
}
