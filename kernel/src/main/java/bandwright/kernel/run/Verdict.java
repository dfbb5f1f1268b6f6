// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.run;

import bandwright.dsl.Report;
import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.diagnostic.Severity;

/** How a notebook came out as a whole. An error weighs more than a failed requirement: its numbers may be missing. */
public enum Verdict {
    GOOD,
    REQUIRE_FAILED,
    ERROR;

    /** Of a design's numbers alone. At the end nothing more can come: what still waits is an error, and so is no ring. */
    public static Verdict of(Report report) {
        if (report.parts().isEmpty() || report.troubles().stream().anyMatch(Verdict::weighs)) {
            return ERROR;
        }
        return report.allPassed() ? GOOD : REQUIRE_FAILED;
    }

    private static boolean weighs(Diagnostic trouble) {
        return trouble.severity() != Severity.NOTE;
    }
}
