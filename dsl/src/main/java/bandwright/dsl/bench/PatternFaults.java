// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.bench;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import bandwright.dsl.model.Design;
import bandwright.dsl.model.Groove;
import bandwright.dsl.pattern.AsCast;

/** What only another pattern mends, so that it is told before anything is cast. */
final class PatternFaults {
    /** Whatever is cut where. */
    private static final Set<String> ANYWAY = Set.of(
            "printable-detail",
            "loose-pieces",
            "bands-overlap",
            "bore-skin",
            "stone-gap",
            "parcel-gap",
            "pavilion-gap",
            "rows-apart",
            "girdle-edge",
            "culet-to-finger",
            "behind-row",
            "stone-place",
            "pin-root",
            "row-held",
            "pin-diameter",
            "pin-contact",
            "pin-reach",
            "pin-notch",
            "pin-clearance",
            "pins-apart",
            "tip-height",
            "tip-reached");

    /** Of seats and channels, where these are cast. */
    static final Set<String> SEATS = Set.of(
            "seat-depth",
            "seat-width",
            "seat-ledge",
            "bore-web",
            "bore-side",
            "channel-width",
            "channel-notch",
            "channel-wall",
            "channel-table",
            "channel-lip-height",
            "channel-lip-thickness",
            "parcel-bore");

    /** Of kept parts, where their grooves are cast. */
    private static final Set<String> KEPT =
            Set.of("let-in", "let-in-room", "joint-metal", "press-fit", "seam-distance");

    /** Of parts that no tool cuts after casting. */
    private static final Set<String> BANDS = Set.of("wear-thickness");

    private PatternFaults() {}

    static List<Step.Basis> of(Design design, BenchParts bench) {
        List<Step.Basis> bases = new ArrayList<>(List.of(new Step.Basis(ANYWAY, Set.of())));
        Set<String> seats = new LinkedHashSet<>();
        AsCast.of(design).seats().forEach(cut -> seats.addAll(List.of(cut.row(), cut.name())));
        add(bases, SEATS, seats);
        Set<String> kept = new LinkedHashSet<>();
        Set<String> cutLater = new LinkedHashSet<>();
        for (Groove groove : design.grooves()) {
            if (bench.isCutAtBench(groove)) {
                cutLater.addAll(groove.from());
            } else {
                groove.keep().ifPresent(keep -> kept.add(keep.part()));
            }
        }
        add(bases, KEPT, kept);
        Set<String> bands = new LinkedHashSet<>(design.parts());
        bands.removeAll(cutLater);
        add(bases, BANDS, bands);
        return bases;
    }

    private static void add(List<Step.Basis> bases, Set<String> checks, Set<String> subjects) {
        if (!subjects.isEmpty()) {
            bases.add(new Step.Basis(checks, subjects));
        }
    }
}
