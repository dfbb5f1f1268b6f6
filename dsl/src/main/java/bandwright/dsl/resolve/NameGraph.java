// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.resolve;

import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Collections;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;

import bandwright.dsl.syntax.Groove;
import bandwright.dsl.syntax.Name;
import bandwright.dsl.syntax.Node;
import bandwright.dsl.syntax.Prongs;
import bandwright.dsl.syntax.Seats;

/**
 * Which names of some definitions hang on which. A part hangs on all that is cut from it and added to it, too. Serves any number of
 * threads: designs that differ in values alone share it.
 */
final class NameGraph {
    private final Definitions definitions;
    /** For a part, the names of the statements that change it. */
    private final Map<String, Set<String>> changes = new TreeMap<>();
    /** What was worked out already: many questions hang on the same names. */
    private final Map<String, Set<String>> nexts = new ConcurrentHashMap<>();

    private final Map<String, Set<String>> closures = new ConcurrentHashMap<>();

    NameGraph(Definitions definitions) {
        this.definitions = definitions;
        for (Entry entry : definitions.entries()) {
            if (entry.statement() instanceof Groove groove) {
                changed(groove.from(), groove.name());
            } else if (entry.statement() instanceof Seats seats) {
                changed(seats.from(), seats.name());
            } else if (entry.statement() instanceof Prongs prongs) {
                changed(List.of(prongs.part()), prongs.name());
            }
        }
    }

    private void changed(List<Name> parts, Name by) {
        parts.forEach(part ->
                changes.computeIfAbsent(part.text(), key -> new TreeSet<>()).add(by.text()));
    }

    /** Names that a name depends on, however far away, known or not; itself only if it is in a loop. */
    Set<String> of(String name) {
        Set<String> known = closures.get(name);
        if (known == null) {
            known = Collections.unmodifiableSet(closure(next(name)));
            closures.put(name, known);
        }
        return known;
    }

    /** Names that a piece of text depends on. */
    Set<String> of(Node node) {
        return closure(NamesUsed.in(node));
    }

    private Set<String> closure(Collection<String> first) {
        Set<String> found = new TreeSet<>(first);
        Deque<String> open = new ArrayDeque<>(found);
        while (!open.isEmpty()) {
            for (String name : next(open.remove())) {
                if (found.add(name)) {
                    open.add(name);
                }
            }
        }
        return found;
    }

    private Set<String> next(String name) {
        Set<String> known = nexts.get(name);
        if (known == null) {
            known = nextOf(name);
            nexts.put(name, known);
        }
        return known;
    }

    private Set<String> nextOf(String name) {
        if (name.equals(Name.RING)) {
            return definitions.names();
        }
        Set<String> next = new TreeSet<>(changes.getOrDefault(name, Set.of()));
        definitions.find(name).ifPresent(entry -> {
            next.addAll(NamesUsed.in(entry.statement()));
            // A kept part, a collar and a piece are what the groove of another name makes them.
            String own = entry.made().get(0).name();
            if (!own.equals(name)) {
                next.add(own);
            }
        });
        return next;
    }
}
