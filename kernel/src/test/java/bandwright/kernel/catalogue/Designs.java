// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.catalogue;

import java.util.List;

import bandwright.dsl.Outcome;
import bandwright.dsl.Sweep;
import bandwright.dsl.Swept;
import bandwright.dsl.Workbench;
import bandwright.dsl.diagnostic.PlainRenderer;
import bandwright.dsl.source.SourceText;

/** What the catalogues of these tests are of. */
final class Designs {
    /** Narrow ones have no room for two lines of stones, wide ones are too heavy. */
    static final String TEXT = """
            finger-size = US 7
            breadth = 4 mm between 3 mm and 6 mm step 0.5 mm
            alloy = red-gold-585
            profile court-like = flat-court(width: breadth, height: 1.8 mm, inside: 0.2 mm)
            band shank { finger finger-size  profile court-like  metal alloy }
            stone-row lights on shank {
              stone round diamond 1.5 mm
              around full
              spacing at least 0.2 mm
              across -1.6 mm, 1.6 mm
            }
            require weight(shank) <= 6 g because "comfort"
            """;

    static final Plan PLAN = new Plan(
            List.of(
                    new Over("finger-size", "US 5..9"),
                    new Over("alloy", "silver-925, red-gold-585, platinum-950-ru"),
                    new Over("breadth", "")),
            List.of("weight(shank)", "count(lights)"));

    private Designs() {}

    static Workbench workbench(String text) {
        Outcome outcome = Workbench.empty().define("cell-1", new SourceText("the text", text));
        if (outcome.hasErrors()) {
            throw new IllegalArgumentException(PlainRenderer.render(outcome.diagnostics()));
        }
        return outcome.workbench();
    }

    static Sweep sweep(Plan plan) {
        Swept swept = workbench(TEXT).sweep(plan.text());
        Sweep sweep = swept.sweep();
        if (sweep == null) {
            throw new IllegalArgumentException(PlainRenderer.render(swept.diagnostics()));
        }
        return sweep;
    }

    static Heading heading(Plan plan) {
        return new Heading("bandwright test", "0123456789abcdef", Digests.sha256(TEXT), plan);
    }
}
