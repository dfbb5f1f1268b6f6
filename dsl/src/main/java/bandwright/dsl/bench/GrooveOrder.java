// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.bench;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import bandwright.dsl.model.Design;
import bandwright.dsl.model.Groove;

/**
 * In which order grooves are cut and what they keep is let in. What goes into kept metal alone goes in while that is still in the hand, or no way would be
 * left; what is cut through kept metal and its neighbours is cut when they are one.
 */
record GrooveOrder(Design design) {
    /** When a groove's turn comes. */
    enum Turn {
        FIRST,
        /** Cut into kept parts that are not in their place yet, for a part of its own. */
        IN_HAND,
        /** Cut when the kept parts it goes through are in their place. */
        IN_PLACE
    }

    Turn turn(Groove groove) {
        long kept = groove.from().stream().filter(part -> isKept(part, groove)).count();
        if (kept == 0) {
            return Turn.FIRST;
        }
        return kept == groove.from().size() && groove.keep().isPresent() ? Turn.IN_HAND : Turn.IN_PLACE;
    }

    List<Groove> at(Turn turn, List<Groove> grooves) {
        return grooves.stream().filter(groove -> turn(groove) == turn).toList();
    }

    /** Grooves that keep something, innermost first. */
    List<Groove> lettingIn(Turn turn) {
        List<Groove> waiting = new ArrayList<>(at(turn, design.grooves()));
        waiting.removeIf(groove -> groove.keep().isEmpty());
        List<Groove> ordered = new ArrayList<>();
        while (!waiting.isEmpty()) {
            Groove next = waiting.stream()
                    .filter(groove -> waiting.stream().noneMatch(other -> goesInto(other, groove)))
                    .findFirst()
                    .orElse(waiting.get(0));
            waiting.remove(next);
            ordered.add(next);
        }
        return ordered;
    }

    /** Grooves that are cut into a part once it is there, those among them that are cut from what these keep. */
    Set<Groove> after(String part) {
        Set<String> parts = new LinkedHashSet<>(List.of(part));
        Set<Groove> after = new LinkedHashSet<>();
        boolean more = true;
        while (more) {
            more = false;
            for (Groove groove : design.grooves()) {
                if (groove.from().stream().anyMatch(parts::contains) && after.add(groove)) {
                    groove.keep().ifPresent(keep -> parts.add(keep.part()));
                    more = true;
                }
            }
        }
        return after;
    }

    private boolean isKept(String part, Groove but) {
        return design.grooves().stream()
                .anyMatch(other -> !other.equals(but)
                        && other.keep().filter(keep -> keep.part().equals(part)).isPresent());
    }

    /** Whether what one groove keeps is let into what another keeps. */
    private static boolean goesInto(Groove inner, Groove outer) {
        return !inner.equals(outer)
                && outer.keep()
                        .filter(keep -> inner.from().contains(keep.part()))
                        .isPresent();
    }
}
