// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.explore;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import bandwright.dsl.construct.Ring;
import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.model.Fault;
import bandwright.dsl.resolve.Kind;
import bandwright.dsl.resolve.Resolution;

/** Whether a ring can be made at all. */
final class Soundness {
    private Soundness() {}

    /** All that is wrong with a design, or, if nothing is, with placing what it describes. Bodies are not made for it. */
    static Set<Diagnostic> faults(Resolution design, Ring ring) {
        Set<Diagnostic> faults = new LinkedHashSet<>(design.problemsOfTheRing());
        if (faults.isEmpty() && !design.bands().isEmpty()) {
            try {
                ring.check();
            } catch (Fault fault) {
                faults.addAll(fault.diagnostics());
            }
        }
        return faults;
    }

    /** Names that any band, cut, row or pin depends on. */
    static Set<String> ringHangsOn(Resolution design) {
        Set<String> names = new LinkedHashSet<>();
        for (Kind kind : List.of(Kind.BAND, Kind.GROOVE, Kind.STONE_ROW, Kind.SEATS, Kind.PRONGS)) {
            for (String name : design.definitions().names(kind)) {
                names.addAll(design.dependencies(name));
            }
        }
        return names;
    }
}
