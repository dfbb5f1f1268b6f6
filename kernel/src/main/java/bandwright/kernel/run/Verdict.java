// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.run;

import bandwright.dsl.Report;
import bandwright.dsl.diagnostic.Diagnostic;

/** How a notebook came out as a whole. An error weighs more than a failed requirement: its numbers may be missing. */
public enum Verdict {
    GOOD,
    REQUIRE_FAILED,
    ERROR;

    /** Of a design's numbers alone. */
    public static Verdict of(Report report) {
        if (report.troubles().stream().anyMatch(Diagnostic::isError)) {
            return ERROR;
        }
        return report.allPassed() ? GOOD : REQUIRE_FAILED;
    }
}
