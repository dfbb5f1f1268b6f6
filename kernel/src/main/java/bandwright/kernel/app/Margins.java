// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.app;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.Answer;

/** How far a requirement is from its limit, for machines: negative where it failed, absent where there is no distance. */
final class Margins {
    private Margins() {}

    /** In the margin's unit. */
    static @Nullable Double value(Answer.Requirement requirement) {
        Answer.Margin margin = requirement.margin();
        return margin == null ? null : signed(requirement, margin.value());
    }

    /** In percent of the limit. */
    static @Nullable Double percent(Answer.Requirement requirement) {
        Answer.Margin margin = requirement.margin();
        Double percent = margin == null ? null : margin.percent();
        return percent == null ? null : signed(requirement, percent);
    }

    private static double signed(Answer.Requirement requirement, double distance) {
        return requirement.passed() ? distance : -distance;
    }
}
