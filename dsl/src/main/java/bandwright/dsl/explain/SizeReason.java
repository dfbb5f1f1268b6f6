// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.explain;

import java.util.ArrayList;
import java.util.List;

import bandwright.dsl.quantity.FingerSize;
import bandwright.dsl.quantity.Quantity;

/** What a finger size means in millimetres, by its system's formula and standard. */
final class SizeReason {
    private SizeReason() {}

    static Step of(FingerSize size) {
        String circumference = Quantity.millimetres(size.circumferenceMm()).toString();
        String diameter = Quantity.millimetres(size.diameterMm()).toString();
        List<Step> parts = new ArrayList<>();
        parts.add(Step.of("inner diameter = circumference / pi = " + diameter, ""));
        size.system().caution().ifPresent(caution -> parts.add(Step.of(caution, "")));
        return new Step(
                size.text() + ": inner circumference " + circumference + "; "
                        + size.system().formula(),
                size.system().standard(),
                parts);
    }
}
