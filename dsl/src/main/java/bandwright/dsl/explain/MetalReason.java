// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.explain;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import bandwright.dsl.material.DensityOrigin;
import bandwright.dsl.material.Element;
import bandwright.dsl.material.MaterialSource;
import bandwright.dsl.material.Metal;
import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.quantity.QuantityFormat;
import bandwright.dsl.quantity.Unit;

/** Where a metal's density is from. */
final class MetalReason {
    private MetalReason() {}

    static Step of(Metal metal) {
        String sources = metal.sources().stream().map(MaterialSource::text).collect(Collectors.joining("; "));
        List<Step> notes = new ArrayList<>(mixing(metal).stream().toList());
        if (!metal.note().isEmpty()) {
            notes.add(Step.of(metal.note(), ""));
        }
        return new Step(
                "density of " + metal.name() + " = " + density(metal.densityGPerCm3()) + ", "
                        + metal.densityOrigin().word(),
                sources,
                notes);
    }

    /** The mixing rule with a recipe's numbers in, where the density is worked out by it. */
    static Optional<Step> mixing(Metal metal) {
        if (metal.densityOrigin() != DensityOrigin.MIXING_RULE
                || metal.composition().isEmpty()) {
            return Optional.empty();
        }
        double whole = 0;
        List<String> volumes = new ArrayList<>();
        Set<String> sources = new LinkedHashSet<>(List.of("rule of mixtures"));
        for (Map.Entry<Element, Double> part : metal.composition().entrySet()) {
            whole += part.getValue();
            volumes.add(percent(part.getValue()) + " / " + density(part.getKey().densityGPerCm3()));
            part.getKey().sources().forEach(source -> sources.add(source.text()));
        }
        return Optional.of(Step.of(
                percent(whole) + " / (" + String.join(" + ", volumes) + ") = " + density(metal.densityGPerCm3()),
                String.join("; ", sources)));
    }

    private static String percent(double share) {
        return QuantityFormat.number(100 * share, 2) + " %";
    }

    static String density(double gPerCm3) {
        return Quantity.of(gPerCm3, Unit.parse("g/cm^3").orElseThrow()).toString();
    }
}
