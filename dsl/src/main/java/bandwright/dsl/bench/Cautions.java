// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.bench;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import bandwright.dsl.material.Metal;
import bandwright.dsl.material.Nickel;
import bandwright.dsl.material.Pouring;
import bandwright.dsl.material.StoneCare;
import bandwright.dsl.material.StoneMaterial;
import bandwright.dsl.material.Working;
import bandwright.dsl.model.Design;
import bandwright.dsl.model.Groove;
import bandwright.dsl.model.StoneRow;

/**
 * One line each where work on this design can hurt somebody or spoil it. They are no instructions: local rules, the makers'
 * sheets and licensed practice come first, as the last line says.
 */
public final class Cautions {
    /** From this share of copper on an alloy is quenched and annealed with care; common practice, no source. */
    private static final double COPPER_RICH = 0.2;

    private final Design design;
    private final Set<Metal> metals = new LinkedHashSet<>();
    private final List<String> lines = new ArrayList<>();

    private Cautions(Design design) {
        this.design = design;
        design.parts().forEach(part -> metals.add(design.metal(part)));
        nickel();
        copperRich();
        torch();
        assay();
        casting();
        bending();
        tools();
        edges();
        lines.add(Sentences.of("caution.rules"));
    }

    /** The cautions that this design gives reason for, each a sentence. */
    public static List<String> of(Design design) {
        return List.copyOf(new Cautions(design).lines);
    }

    private void nickel() {
        name(
                "caution.nickel",
                metals.stream().filter(metal -> metal.nickel() == Nickel.YES).toList());
        name(
                "caution.nickel-unknown",
                metals.stream()
                        .filter(metal -> metal.nickel() == Nickel.UNKNOWN)
                        .toList());
    }

    private void copperRich() {
        name(
                "caution.copper",
                metals.stream()
                        .filter(metal -> metal.family().equals("gold") && share(metal, "Cu") >= COPPER_RICH)
                        .toList());
        name(
                "caution.zinc",
                metals.stream().filter(metal -> share(metal, "Zn") > 0).toList());
        name(
                "caution.cadmium",
                metals.stream()
                        .filter(metal -> share(metal, "Cd") > 0 || share(metal, "Pb") > 0)
                        .toList());
        worked("caution.hot", Set.of(Working.HOT));
        worked("caution.turned", Set.of(Working.TURNED));
        worked("caution.turned-cold", Set.of(Working.TURNED_COLD));
        worked("caution.cut-off", Set.of(Working.TURNED, Working.TURNED_COLD));
        worked("caution.working-unknown", Set.of(Working.UNKNOWN));
        name(
                "caution.cobalt",
                metals.stream().filter(metal -> share(metal, "Co") > 0.1).toList());
    }

    private void worked(String key, Set<Working> ways) {
        name(
                key,
                metals.stream()
                        .filter(metal -> ways.contains(Working.of(metal)))
                        .toList());
    }

    private void torch() {
        boolean soldered = design.grooves().stream()
                .filter(groove -> metals(groove).noneMatch(RawParts::isTurned))
                .anyMatch(groove -> groove.keep().isPresent()
                        && !groove.joint()
                                .filter(joint -> !joint.equals("solder"))
                                .isPresent()
                        && !groove.isPoured());
        if (soldered) {
            lines.add(Sentences.of("caution.solder"));
        }
        if (design.grooves().stream()
                .anyMatch(groove -> groove.joint().filter("weld"::equals).isPresent())) {
            lines.add(Sentences.of("caution.weld"));
        }
        if (!design.stoneRows().isEmpty()) {
            lines.add(Sentences.of("caution.stones"));
            fears();
        }
        for (Groove groove : design.grooves()) {
            if (groove.isPoured() && groove.keep().isPresent()) {
                pour(groove, groove.keep().get());
            }
        }
    }

    private Stream<Metal> metals(Groove groove) {
        return Stream.concat(
                groove.from().stream().map(design::metal),
                groove.keep().stream().map(Groove.Keep::metal));
    }

    /** What each kind of stone fears of the bench, and which kinds nothing is known of. */
    private void fears() {
        Set<String> unknown = new TreeSet<>();
        Set<StoneMaterial> materials = design.stoneRows().stream()
                .map(StoneRow::material)
                .collect(Collectors.toCollection(LinkedHashSet::new));
        for (StoneMaterial material : materials) {
            Optional<StoneCare> care = StoneCare.of(material);
            if (care.isEmpty()) {
                unknown.add(material.name());
            } else if (!care.get().isHardy()) {
                lines.add(Sentences.of(
                        "caution.stone", material.name(), care.get().told()));
            }
        }
        if (!unknown.isEmpty()) {
            lines.add(Sentences.of("caution.stone-unknown", String.join(", ", unknown)));
        }
        if (materials.stream().anyMatch(material -> !material.name().equals("diamond"))) {
            lines.add(Sentences.of("caution.stone-treated"));
        }
    }

    /** Poured metal must be molten through before what it is poured into begins to melt. */
    private void pour(Groove groove, Groove.Keep keep) {
        for (String part : groove.from()) {
            Metal metal = design.metal(part);
            String key = switch (Pouring.of(keep.metal(), metal)) {
                case RUINS, BOND_UNKNOWN -> "caution.pour-turned";
                case MELTS_FAR_BELOW -> "caution.pour-hotter";
                case MELTS -> "caution.pour";
                case NEAR -> "caution.pour-near";
                case UNKNOWN -> "caution.pour-unknown";
                case STANDS -> "";
            };
            if (!key.isEmpty()) {
                lines.add(Sentences.of(key, keep.metal().name(), metal.name()));
            }
        }
    }

    private void assay() {
        Set<String> standards = metals.stream()
                .map(metal -> metal.family() + " " + metal.fineness())
                .collect(Collectors.toCollection(TreeSet::new));
        if (metals.stream().anyMatch(Metal::isPrecious)) {
            lines.add(Sentences.of(standards.size() > 1 ? "caution.assay-mixed" : "caution.assay"));
        }
    }

    private void casting() {
        if (metals.stream().allMatch(RawParts::isTurned)) {
            return;
        }
        lines.add(Sentences.of("caution.molten"));
        lines.add(Sentences.of("caution.resin"));
        lines.add(Sentences.of("caution.investment"));
    }

    private void bending() {
        if (RawParts.canBeBent(design)) {
            lines.add(Sentences.of("caution.bending"));
        }
    }

    private void tools() {
        boolean cut = metals.stream().anyMatch(RawParts::isTurned)
                || !design.seats().isEmpty()
                || design.grooves().stream().anyMatch(Groove::atBench);
        if (cut) {
            lines.add(Sentences.of("caution.chips"));
        }
        lines.add(Sentences.of("caution.motor"));
    }

    private void edges() {
        lines.add(Sentences.of(design.prongs().isEmpty() ? "caution.edges" : "caution.edges-pins"));
    }

    private void name(String key, List<Metal> these) {
        if (!these.isEmpty()) {
            lines.add(Sentences.of(key, these.stream().map(Metal::name).collect(Collectors.joining(", "))));
        }
    }

    private static double share(Metal metal, String symbol) {
        return metal.composition().entrySet().stream()
                .filter(part -> part.getKey().symbol().equals(symbol))
                .mapToDouble(Map.Entry::getValue)
                .sum();
    }
}
