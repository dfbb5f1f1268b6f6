// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.explain;

import java.util.List;
import java.util.stream.Collectors;

import bandwright.dsl.material.MaterialSource;
import bandwright.dsl.material.Metal;
import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.quantity.Unit;

/** Where a metal's density is from. */
final class MetalReason {
    private MetalReason() {}

    static Step of(Metal metal) {
        String sources = metal.sources().stream().map(MaterialSource::text).collect(Collectors.joining("; "));
        List<Step> notes = metal.note().isEmpty() ? List.of() : List.of(Step.of(metal.note(), ""));
        return new Step(
                "density of " + metal.name() + " = " + density(metal.densityGPerCm3()) + ", "
                        + metal.densityOrigin().word(),
                sources,
                notes);
    }

    static String density(double gPerCm3) {
        return Quantity.of(gPerCm3, Unit.parse("g/cm^3").orElseThrow()).toString();
    }
}
