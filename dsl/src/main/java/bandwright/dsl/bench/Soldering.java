// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.bench;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

import bandwright.dsl.material.Metal;
import bandwright.dsl.material.Working;
import bandwright.dsl.model.Design;
import bandwright.dsl.model.Groove;
import bandwright.dsl.quantity.QuantityFormat;

/**
 * What is soldered to what, and which solder that takes: of the piece's fineness where its metals have but one, and flowing before the first of them begins
 * to melt. Common practice, no source.
 */
final class Soldering {
    private Soldering() {}

    /** A collar that closes the way in has a joint of its own. */
    static Step step(Design design, Groove groove, Groove.Keep keep) {
        List<String> parts = new ArrayList<>(List.of(keep.part()));
        if (groove.letIn().orElse(null) instanceof Groove.LetInFrom from) {
            parts.add(from.collar());
        }
        Set<Metal> metals = new LinkedHashSet<>();
        groove.from().forEach(part -> metals.add(design.metal(part)));
        metals.add(keep.metal());
        if (metals.stream().anyMatch(RawParts::isTurned)) {
            String turned = Steps.list(
                    metals.stream().filter(RawParts::isTurned).map(Metal::name).toList());
            return Step.of("step.join.no-solder", Steps.list(parts), Steps.list(groove.from()), turned);
        }
        String key = metals.stream().allMatch(Soldering::isHot) ? "step.join.solder-hot" : "step.join.solder";
        return Step.of(key, Steps.list(parts), Steps.list(groove.from()), solder(metals), flowing(metals));
    }

    /** Closing the joint of a ring that is bent from strip. */
    static Step closing(Metal metal) {
        Set<Metal> one = Set.of(metal);
        return Step.of(isHot(metal) ? "step.close-hot" : "step.close", metal.name(), solder(one), flowing(one));
    }

    private static boolean isHot(Metal metal) {
        return Working.of(metal) == Working.HOT;
    }

    /** Which solder: of one fineness where there is but one, else what the assay office says. */
    private static String solder(Set<Metal> metals) {
        Set<String> standards = metals.stream()
                .map(metal ->
                        metal.fineness() == null ? "" : metal.family() + " solder of fineness " + metal.fineness())
                .collect(Collectors.toCollection(TreeSet::new));
        return standards.size() == 1 && !standards.contains("")
                ? standards.iterator().next()
                : Sentences.of("step.join.solder.mixed");
    }

    /** Solder flows before either metal begins to melt. */
    private static String flowing(Set<Metal> metals) {
        double least = Double.POSITIVE_INFINITY;
        boolean memory = false;
        for (Metal metal : metals) {
            Double solidus = metal.solidusC();
            if (solidus == null) {
                return Sentences.of(metals.size() == 1 ? "step.close.unknown" : "step.join.solder.unknown");
            }
            if (solidus < least) {
                least = solidus;
                memory = metal.meltingFromMemory();
            }
        }
        if (metals.size() == 1) {
            return Sentences.of(
                    memory ? "step.close.below-memory" : "step.close.below", QuantityFormat.number(least, 0));
        }
        return Sentences.of(
                memory ? "step.join.solder.below-memory" : "step.join.solder.below", QuantityFormat.number(least, 0));
    }
}
