// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.app;

import bandwright.kernel.run.Verdict;

/** What the command tells its caller. */
final class ExitCode {
    /** All is well. */
    static final int GOOD = 0;
    /** A cell had an error or waits in the end, there is no ring, or the program itself failed. */
    static final int ERROR = 1;
    /** The command was used wrongly, or a file cannot be read or written; no file was changed, but for a sweep under way. */
    static final int USAGE = 2;
    /** All cells ran, but a requirement is not met. */
    static final int REQUIRE_FAILED = 3;

    private ExitCode() {}

    static int of(Verdict verdict) {
        return switch (verdict) {
            case GOOD -> GOOD;
            case REQUIRE_FAILED -> REQUIRE_FAILED;
            case ERROR -> ERROR;
        };
    }
}
