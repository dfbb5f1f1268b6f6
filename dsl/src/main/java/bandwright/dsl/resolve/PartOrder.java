// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.resolve;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

import bandwright.dsl.syntax.Groove;

/**
 * Parts in the order in which they are made: bands by name, then what is cut from them, then what is cut from that, by name
 * again. The order of cells has no part in it.
 */
final class PartOrder {
    private final List<String> grooves = new ArrayList<>();
    private final List<String> parts = new ArrayList<>();

    PartOrder(Definitions definitions) {
        parts.addAll(definitions.names(Kind.BAND));
        List<Entry> left = new ArrayList<>(definitions.names(Kind.GROOVE).stream()
                .flatMap(name -> definitions.find(name).stream())
                .toList());
        while (!left.isEmpty()) {
            Set<String> toCome = new TreeSet<>();
            left.forEach(entry -> entry.made().forEach(made -> toCome.add(made.name())));
            List<Entry> ready =
                    left.stream().filter(entry -> !cutsFrom(entry, toCome)).toList();
            // Grooves that wait for each other have no order; their names serve.
            List<Entry> round = ready.isEmpty() ? List.copyOf(left) : ready;
            round.forEach(this::add);
            left.removeAll(round);
        }
    }

    /** Names of the grooves. */
    List<String> grooves() {
        return grooves;
    }

    /** Names of the parts. */
    List<String> parts() {
        return parts;
    }

    private void add(Entry entry) {
        grooves.add(entry.made().get(0).name());
        entry.made().stream().filter(made -> made.kind().isPart()).forEach(made -> parts.add(made.name()));
    }

    private static boolean cutsFrom(Entry entry, Set<String> parts) {
        return ((Groove) entry.statement()).from().stream().anyMatch(part -> parts.contains(part.text()));
    }
}
