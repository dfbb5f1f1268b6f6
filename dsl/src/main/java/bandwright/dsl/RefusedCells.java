// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.resolve.Resolution;
import bandwright.dsl.source.Place;

/**
 * Names that cells would have made which were refused, so that whoever misses one of them hears why. Nothing of it belongs to the
 * design.
 */
final class RefusedCells {
    static final RefusedCells NONE = new RefusedCells(Map.of());

    /** Nobody misses more. */
    private static final int MOST = 10_000;

    /** Where a name would have been made. */
    private record Cell(String id, String name) {}

    private final Map<String, Cell> byName;

    private RefusedCells(Map<String, Cell> byName) {
        this.byName = Collections.unmodifiableMap(byName);
    }

    /**
     * After a cell was refused.
     *
     * @param cellName what errors call it
     * @param names all that it would have made
     */
    RefusedCells refused(String cellId, String cellName, Set<String> names) {
        Map<String, Cell> all = without(cellId);
        names.stream().limit(Math.max(0, MOST - all.size())).forEach(name -> all.put(name, new Cell(cellId, cellName)));
        return all.equals(byName) ? this : new RefusedCells(all);
    }

    /** After a cell was taken, or taken away. */
    RefusedCells taken(String cellId, Set<String> names) {
        Map<String, Cell> left = without(cellId);
        left.keySet().removeAll(names);
        return new RefusedCells(left);
    }

    private Map<String, Cell> without(String cellId) {
        Map<String, Cell> left = new LinkedHashMap<>(byName);
        left.values().removeIf(cell -> cell.id().equals(cellId));
        return left;
    }

    /** The same diagnostics; those that miss something which a refused cell would have made say so. */
    List<Diagnostic> explained(List<Diagnostic> told) {
        return byName.isEmpty() ? told : told.stream().map(this::explained).toList();
    }

    private Diagnostic explained(Diagnostic told) {
        if (!Resolution.isWaiting(told) || told.advice() != null) {
            return told;
        }
        for (Map.Entry<String, Cell> refused : byName.entrySet()) {
            if (misses(told, refused.getKey())) {
                return advised(
                        told,
                        refused.getValue().name()
                                + " would have defined it, but was refused: mend it and run it again.");
            }
        }
        return told;
    }

    private static boolean misses(Diagnostic told, String name) {
        Place place = told.place();
        if (told.code().equals("waits")) {
            String missing = Diagnostic.warning("not-defined-yet", null)
                    .with(name)
                    .build()
                    .message();
            return missing.equals(told.found());
        }
        return place != null && place.source().text(place.span()).equals(name);
    }

    private static Diagnostic advised(Diagnostic told, String why) {
        return new Diagnostic(
                told.code(),
                told.severity(),
                told.message(),
                told.place(),
                told.labels(),
                told.found(),
                told.expected(),
                told.suggestion(),
                why);
    }
}
