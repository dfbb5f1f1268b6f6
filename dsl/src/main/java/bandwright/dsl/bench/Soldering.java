// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.bench;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

import bandwright.dsl.material.LawfulFineness;
import bandwright.dsl.material.Metal;
import bandwright.dsl.material.Working;
import bandwright.dsl.quantity.QuantityFormat;

/**
 * What is soldered to what, and which solder that takes: of the piece's fineness where its metals have but one, and flowing before the first of them begins
 * to melt. Common practice, no source.
 */
final class Soldering {
    private Soldering() {}

    /**
     * @param parts what is soldered
     * @param into what to
     * @param metals of these
     * @param heated these metals, and those of what is let into them already
     * @param again whether something inside was soldered before
     */
    static Step step(List<String> parts, List<String> into, Set<Metal> metals, Set<Metal> heated, boolean again) {
        if (metals.stream().anyMatch(RawParts::isTurned)) {
            String turned = Steps.list(
                    metals.stream().filter(RawParts::isTurned).map(Metal::name).toList());
            return Step.of("step.join.no-solder", Steps.list(parts), Steps.list(into), turned);
        }
        boolean hot = metals.stream().allMatch(Soldering::isHot);
        boolean mixed = !hot && metals.stream().anyMatch(Soldering::isHot);
        return Step.of(
                hot ? "step.join.solder-hot" : "step.join.solder",
                Steps.list(parts),
                Steps.list(into),
                solder(metals),
                flowing(heated),
                (again ? Sentences.of("step.join.solder-lower") : "")
                        + (mixed ? Sentences.of("step.join.solder-hot-mixed") : ""));
    }

    /** Closing the joint of a ring that is bent from strip. */
    static Step closing(Metal metal) {
        Set<Metal> one = Set.of(metal);
        return Step.of(isHot(metal) ? "step.close-hot" : "step.close", metal.name(), solder(one), flowing(one));
    }

    /** Whether torch and flux leave something for the pickle to take off. */
    static boolean wantsPickle(Set<Metal> metals) {
        return metals.stream().noneMatch(RawParts::isTurned) && !metals.stream().allMatch(Soldering::isHot);
    }

    private static boolean isHot(Metal metal) {
        return Working.of(metal) == Working.HOT;
    }

    /** Which solder: of one fineness where there is but one, else what the assay office says. */
    private static String solder(Set<Metal> metals) {
        Set<String> standards = metals.stream()
                .map(metal -> metal.fineness() == null || !LawfulFineness.holds(metal)
                        ? ""
                        : metal.family() + " solder of fineness " + metal.fineness())
                .collect(Collectors.toCollection(TreeSet::new));
        if (standards.size() > 1) {
            return Sentences.of("step.join.solder.mixed");
        }
        String only = standards.iterator().next();
        return only.isEmpty()
                ? Sentences.of(metals.size() == 1 ? "step.join.solder.ask" : "step.join.solder.mixed")
                : only;
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
