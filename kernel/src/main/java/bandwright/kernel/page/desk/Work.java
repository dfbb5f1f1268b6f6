// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.desk;

import org.jspecify.annotations.Nullable;

import bandwright.kernel.cell.CellLanguages;

/** The one thing at a time that a notebook works at, and the means to stop it from another thread. */
final class Work {
    private final CellLanguages languages;
    private final Object turn = new Object();
    private @Nullable Thread working;
    private boolean program;
    private boolean stopped;

    Work(CellLanguages languages) {
        this.languages = languages;
    }

    /** @param asked whether a person has asked for it, so that only a person stops it */
    void begin(boolean asked) {
        synchronized (turn) {
            working = Thread.currentThread();
            program = asked;
            stopped = false;
        }
    }

    /** Whether it was let come to its end. */
    boolean end() {
        synchronized (turn) {
            working = null;
            // Whoever wanted it to stop wanted this to, and not what the thread does next.
            boolean interrupted = Thread.interrupted();
            return !stopped && !interrupted;
        }
    }

    /** @param all also what a person has asked for */
    void stop(boolean all) {
        synchronized (turn) {
            Thread present = working;
            if (present != null && (all || !program)) {
                stopped = true;
                languages.interrupted();
                present.interrupt();
            }
        }
    }
}
