// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.bench;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import bandwright.dsl.construct.Ring;
import bandwright.dsl.model.Design;
import bandwright.dsl.model.Groove;
import bandwright.dsl.model.Prongs;
import bandwright.dsl.pattern.AsCast;

/** Which parts come from the caster, and which the bench makes: parted off what was cast, or of metal of their own. */
final class BenchParts {
    private final Design design;
    private final Set<String> cast;
    private final List<Groove> inPattern;

    BenchParts(Design design) {
        this.design = design;
        AsCast asCast = AsCast.of(design);
        this.inPattern = asCast.grooves();
        this.cast = new LinkedHashSet<>(asCast.parts());
        cast.removeAll(poured());
    }

    /** Kept parts that are poured into their place: they have no pattern. */
    Set<String> poured() {
        Set<String> poured = new LinkedHashSet<>();
        for (Groove groove : design.grooves()) {
            if (groove.isPoured()) {
                groove.keep().ifPresent(keep -> poured.add(keep.part()));
            }
        }
        return poured;
    }

    /** Of these, those whose groove the bench cuts. */
    Set<String> pouredAtBench() {
        Set<String> late = new LinkedHashSet<>();
        for (Groove groove : design.grooves()) {
            if (isCutAtBench(groove)) {
                groove.keep().map(Groove.Keep::part).filter(poured()::contains).ifPresent(late::add);
            }
        }
        return late;
    }

    /** Whether a part has a pattern. */
    boolean isCast(String part) {
        return cast.contains(part);
    }

    /** Whether the bench cuts a groove: told so, or because it is cut from what only the bench makes. */
    boolean isCutAtBench(Groove groove) {
        return !inPattern.contains(groove);
    }

    /** Kept parts that only the bench makes, of metal of their own. */
    Set<String> ownMetal() {
        Set<String> own = new LinkedHashSet<>();
        for (Groove groove : design.grooves()) {
            if (isCutAtBench(groove) && !groove.isPoured()) {
                groove.keep().ifPresent(keep -> own.add(keep.part()));
            }
        }
        return own;
    }

    /** Pins that stand: between the stones of a row of one there is no gap for any. */
    static List<Prongs> pins(Ring ring) {
        return ring.design().prongs().stream()
                .filter(prongs -> !ring.layout(prongs.row()).gaps().isEmpty())
                .toList();
    }

    /** The collars and pieces that one groove parts off, whoever makes it. */
    static List<String> parted(Groove groove) {
        List<String> parted = new ArrayList<>(groove.leaving());
        groove.collar().ifPresent(parted::add);
        return parted;
    }

    /** What the bench parts off a part, and off that in turn; the part itself not among it. */
    Set<String> partedOff(String part) {
        Set<String> parted = new LinkedHashSet<>();
        for (Groove groove : design.grooves()) {
            boolean ours =
                    groove.from().contains(part) || groove.from().stream().anyMatch(parted::contains);
            if (isCutAtBench(groove) && ours) {
                parted.addAll(parted(groove));
            }
        }
        parted.remove(part);
        return parted;
    }
}
