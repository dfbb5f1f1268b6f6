// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.List;
import java.util.Objects;

import bandwright.dsl.Outcome;
import bandwright.dsl.Workbench;
import bandwright.dsl.source.SourceText;

import static org.assertj.core.api.Assertions.assertThat;

/** Rings to check, from their text. */
final class Bench {
    private Bench() {}

    /** A flat silver band on a finger of ISO 57. */
    static String band(double width, double height) {
        return "profile slab = flat(width: " + width + " mm, height: " + height + " mm)\n"
                + "band shank { finger ISO 57  profile slab  metal silver-925 }\n";
    }

    /** Stones of 1.5 mm on the band, in the words of the rest of their row. */
    static String row(String rest) {
        return "stone-row lights on shank { stone round diamond 1.5 mm  " + rest + " }\n";
    }

    /** All that is found, in the order in which it is shown. */
    static List<Finding> all(String text) {
        Outcome outcome = Workbench.empty().run("cell", new SourceText("cell", text));
        assertThat(outcome.diagnostics()).as(text).isEmpty();
        return outcome.workbench().findings().all();
    }

    static List<Finding> of(String check, String text) {
        return all(text).stream()
                .filter(finding -> finding.check().equals(check))
                .toList();
    }

    /** The only finding of a check. */
    static Finding one(String check, String text) {
        List<Finding> found = of(check, text);
        assertThat(found).as(check + " of " + text).hasSize(1);
        return found.get(0);
    }

    static Verdict verdict(String check, String text) {
        return one(check, text).verdict();
    }

    static double measured(Finding finding) {
        return Objects.requireNonNull(finding.measured()).value();
    }
}
