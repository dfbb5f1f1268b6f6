// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.explore;

import java.util.List;
import java.util.Map;
import java.util.Optional;

import bandwright.dsl.resolve.Definitions;
import bandwright.dsl.resolve.Entry;
import bandwright.dsl.resolve.Redefinition;
import bandwright.dsl.syntax.Definition;

/**
 * One run of a cell that decided something: gave a reason for something new, changed what a name means, or took it away. Kept
 * by the two stores of definitions, so that what it did can be worked out when someone asks.
 */
public record Chapter(Definitions before, Definitions after) {
    /** Whether there is something to tell. */
    public boolean tells() {
        return !changes().isEmpty() || !reasons().isEmpty() || !gone().isEmpty();
    }

    /** Names that came to mean something else. */
    List<Redefinition> changes() {
        List<Redefinition> all = after.redefinitions();
        return all.subList(Math.min(before.redefinitions().size(), all.size()), all.size());
    }

    /** New statements that give a reason. */
    List<Entry> reasons() {
        return after.entries().stream()
                .filter(entry -> entry.because().isPresent() && !entry.made().isEmpty())
                .filter(entry -> entry.made().stream()
                        .allMatch(made -> before.find(made.name()).isEmpty()))
                .toList();
    }

    /** What was taken away: by {@code forget}, or by a cell that no longer makes it. */
    List<Entry> gone() {
        return before.entries().stream()
                .filter(entry -> !entry.made().isEmpty())
                .filter(entry -> entry.made().stream()
                        .allMatch(made -> after.find(made.name()).isEmpty()))
                .toList();
    }

    /** How a statement is told: a definition by its name and value, others by what they make. */
    static Map.Entry<String, String> told(Entry entry) {
        String name = entry.made().get(0).name();
        boolean value = entry.statement() instanceof Definition;
        return Map.entry(name, value ? entry.said() : entry.said().replaceAll("\\s+", " "));
    }

    static Optional<String> reason(Entry entry) {
        return entry.because();
    }
}
