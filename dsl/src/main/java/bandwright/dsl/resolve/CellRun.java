// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.resolve;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.diagnostic.NearNames;
import bandwright.dsl.material.MetalCatalogue;
import bandwright.dsl.material.StoneCatalogue;
import bandwright.dsl.source.Place;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.syntax.Cell;
import bandwright.dsl.syntax.Definition;
import bandwright.dsl.syntax.Forget;
import bandwright.dsl.syntax.Name;
import bandwright.dsl.syntax.Option;
import bandwright.dsl.syntax.Statement;
import bandwright.dsl.syntax.Title;

/** One run of a cell: what it takes away, what it adds, and what is to be said about it. */
final class CellRun {
    private final Definitions before;
    private final String cellId;
    private final SourceText source;
    private final Map<String, List<Entry>> cells;
    private final List<Entry> own = new ArrayList<>();
    private final Map<String, Made> ownNames = new LinkedHashMap<>();
    private final List<Redefinition> redefinitions;
    private final List<Diagnostic> diagnostics = new ArrayList<>();
    private @Nullable Entry title;

    CellRun(Definitions before, String cellId, SourceText source) {
        this.before = before;
        this.cellId = cellId;
        this.source = source;
        this.cells = new LinkedHashMap<>(before.cells());
        this.redefinitions = new ArrayList<>(before.redefinitions());
        // Keeps the cell's place among the others, so that running it again moves nothing.
        cells.put(cellId, List.of());
    }

    Definitions.Change run(Cell cell) {
        for (Statement statement : cell.statements()) {
            if (statement instanceof Forget forget) {
                forget(forget);
            } else if (Entry.isKept(statement)) {
                add(new Entry(cellId, source, statement));
            }
        }
        cells.put(cellId, List.copyOf(own));
        // A session without cell ids has a new cell each time: those that make nothing any more are not kept.
        cells.values().removeIf(List::isEmpty);
        boolean failed = diagnostics.stream().anyMatch(Diagnostic::isError);
        return new Definitions.Change(
                failed ? before : new Definitions(cells, redefinitions, before.functions()), diagnostics);
    }

    private void forget(Forget forget) {
        String name = forget.name().text();
        boolean found = remove(entry -> makes(entry, name));
        found |= own.removeIf(entry -> makes(entry, name));
        ownNames.keySet()
                .retainAll(own.stream()
                        .flatMap(entry -> entry.made().stream())
                        .map(Made::name)
                        .toList());
        if (!found) {
            diagnostics.add(
                    nothingToForget(before, name, source.place(forget.name().span())));
        }
    }

    private void add(Entry entry) {
        boolean good = true;
        for (Made made : entry.made()) {
            good &= isNew(made);
            good &= isFree(made);
        }
        if (entry.statement() instanceof Title) {
            good &= isFirstTitle(entry);
        }
        if (good) {
            replaceOthers(entry);
            String again = entry.askedAgain();
            own.removeIf(other -> !again.isEmpty() && other.askedAgain().equals(again));
            own.add(entry);
        }
    }

    private boolean isNew(Made made) {
        Made first = ownNames.putIfAbsent(made.name(), made);
        if (first != null) {
            diagnostics.add(Diagnostic.error("duplicate-name", source.place(made.span()))
                    .with(made.name())
                    .label(source.place(first.span()), "first here")
                    .label(source.place(made.span()), "and again here")
                    .build());
        }
        return first == null;
    }

    private boolean isFree(Made made) {
        boolean metal = MetalCatalogue.find(made.name()).isPresent();
        boolean builtIn = metal || StoneCatalogue.find(made.name()).isPresent();
        if (made.kind() == Kind.OPTION) {
            return true;
        } else if (made.name().equals(Name.RING)) {
            diagnostics.add(Diagnostic.error("reserved-name", source.place(made.span()))
                    .with(Name.RING)
                    .build());
            return false;
        } else if (builtIn) {
            diagnostics.add(Diagnostic.error("built-in-name", source.place(made.span()))
                    .with(made.name(), metal ? "metal" : "stone material")
                    .suggest(source.place(made.span()), "my-" + made.name())
                    .build());
        }
        return !builtIn;
    }

    private boolean isFirstTitle(Entry entry) {
        if (title != null) {
            diagnostics.add(Diagnostic.error("title-twice", entry.place())
                    .label(title.place(), "first here")
                    .label(entry.place(), "and again here")
                    .build());
            return false;
        }
        title = entry;
        return true;
    }

    private void replaceOthers(Entry entry) {
        String again = entry.askedAgain();
        if (!again.isEmpty()) {
            remove(other -> other.askedAgain().equals(again));
        }
        for (Made made : entry.made()) {
            Optional<Entry> old = before.find(made.name());
            if (old.isEmpty()) {
                continue;
            }
            if (!old.get().said().equals(entry.said())) {
                redefinitions.add(Redefinition.of(made.name(), old.get(), entry));
            }
            boolean elsewhere = remove(other -> makes(other, made.name()));
            boolean askedAgain = made.kind() == Kind.OPTION && old.get().statement() instanceof Option;
            if (elsewhere && !askedAgain) {
                diagnostics.add(redefined(made, old.get(), entry));
            }
        }
    }

    private Diagnostic redefined(Made made, Entry old, Entry entry) {
        Place oldPlace = old.place();
        String where = oldPlace.source().name() + ", line " + oldPlace.line();
        String oldName = old.made().get(0).name();
        Diagnostic.Builder note =
                Diagnostic.note("redefined", entry.place(made.span())).with(made.name(), where);
        if (made.kind() == Kind.DEFINITION && old.statement() instanceof Definition) {
            note.found(old.said());
            boolean dropped = ((Definition) old.statement()).range() != null
                    && entry.statement() instanceof Definition now
                    && now.range() == null;
            if (dropped) {
                note.advice("Its range went with it: write it again with between … and … to keep it.");
            }
        } else if (!oldName.equals(made.name())) {
            note.advice("All of " + oldName + ", which made " + made.name() + ", is taken away.");
        }
        return note.build();
    }

    private boolean remove(Predicate<Entry> gone) {
        boolean[] found = {false};
        cells.replaceAll((cell, entries) -> {
            List<Entry> left = entries.stream().filter(gone.negate()).toList();
            found[0] |= left.size() < entries.size();
            return left;
        });
        return found[0];
    }

    private static boolean makes(Entry entry, String name) {
        return entry.made().stream().anyMatch(made -> made.name().equals(name));
    }

    static Diagnostic nothingToForget(Definitions definitions, String name, @Nullable Place place) {
        return Diagnostic.note("nothing-to-forget", place)
                .with(name)
                .expected(near(NearNames.nearest(name, definitions.names())))
                .build();
    }

    /** Near names in one line, or nothing if there are none. */
    static @Nullable String near(List<String> names) {
        return names.isEmpty() ? null : String.join(", ", names);
    }
}
