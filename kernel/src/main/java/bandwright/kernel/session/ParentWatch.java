// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.session;

import java.util.Optional;

/** Notices when the program that started this one is gone, so that no kernel is left behind without a client. */
public final class ParentWatch {
    private static final long BETWEEN_LOOKS_MS = 1000;

    private ParentWatch() {}

    /** Looks every second, on a thread of its own; does nothing if there is no parent to be seen. */
    public static void start(Runnable gone) {
        ProcessHandle.current().parent().ifPresent(parent -> start(parent, gone));
    }

    private static void start(ProcessHandle parent, Runnable gone) {
        Thread thread = new Thread(() -> watch(parent, gone), "parent watch");
        thread.setDaemon(true);
        thread.start();
    }

    private static void watch(ProcessHandle parent, Runnable gone) {
        try {
            while (isThere(parent)) {
                Thread.sleep(BETWEEN_LOOKS_MS);
            }
            gone.run();
        } catch (InterruptedException ended) {
            return;
        }
    }

    // Who loses its parent gets another one at once; a parent that ended may still be listed for a while.
    private static boolean isThere(ProcessHandle parent) {
        return parent.isAlive() && ProcessHandle.current().parent().equals(Optional.of(parent));
    }
}
