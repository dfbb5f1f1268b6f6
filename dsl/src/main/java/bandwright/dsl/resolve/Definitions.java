// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.resolve;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.syntax.Cell;
import bandwright.dsl.syntax.Definition;
import bandwright.dsl.syntax.Forget;
import bandwright.dsl.syntax.Limit;
import bandwright.dsl.syntax.Measured;
import bandwright.dsl.syntax.Option;
import bandwright.dsl.syntax.Require;
import bandwright.dsl.syntax.Statement;
import bandwright.dsl.syntax.Title;

/**
 * All that the cells of a notebook say at a time: one meaning for each name. Immutable; running a cell gives another
 * store. Which cell ran first matters only where two of them make the same name.
 *
 * <pre>{@code
 * Definitions.Change change = Definitions.EMPTY.with("cell 1", source, RingParser.parse(source).cell());
 * Resolution design = new Resolution(change.definitions(), measurer);
 * }</pre>
 */
public final class Definitions {
    public static final Definitions EMPTY = new Definitions(Map.of(), List.of(), Map.of());

    /** By cell, cells in the order in which they first ran, statements in the order of their text. */
    private final Map<String, List<Entry>> cells;

    private final Map<String, Entry> byName = new LinkedHashMap<>();
    private final Map<String, Made> made = new LinkedHashMap<>();
    private final List<Redefinition> redefinitions;
    private final Map<String, OwnFunction> functions;

    Definitions(Map<String, List<Entry>> cells, List<Redefinition> redefinitions, Map<String, OwnFunction> functions) {
        this.functions = Collections.unmodifiableMap(new TreeMap<>(functions));
        this.cells = Collections.unmodifiableMap(new LinkedHashMap<>(cells));
        this.redefinitions = List.copyOf(redefinitions);
        entries()
                .forEach(entry -> entry.made().forEach(name -> {
                    byName.put(name.name(), entry);
                    made.put(name.name(), name);
                }));
    }

    /** A store and what is to be said about how it came to be. With an error among it, the store is the old one. */
    public record Change(Definitions definitions, List<Diagnostic> diagnostics) {
        public Change {
            diagnostics = List.copyOf(diagnostics);
        }

        public boolean hasErrors() {
            return diagnostics.stream().anyMatch(Diagnostic::isError);
        }
    }

    /** Runs a cell: all it made before is replaced by what it makes now; {@code forget} in it takes effect. */
    public Change with(String cellId, SourceText source, Cell cell) {
        return new CellRun(this, cellId, source).run(cell);
    }

    /** Takes away all that a cell made. */
    public Definitions without(String cellId) {
        Map<String, List<Entry>> left = new LinkedHashMap<>(cells);
        left.remove(cellId);
        return new Definitions(left, redefinitions, functionsWithout(cellId));
    }

    /** What other cells made, and nothing of how it came to be; functions of all cells stay. */
    public Definitions startingOver(Collection<String> cellIds) {
        Map<String, List<Entry>> left = new LinkedHashMap<>(cells);
        left.keySet().removeAll(cellIds);
        return new Definitions(left, List.of(), functions);
    }

    /** The same with the functions of a cell; those it gave before are taken away, and those of the same names of other cells. */
    public Definitions withFunctions(String cellId, List<OwnFunction> own) {
        Map<String, OwnFunction> all = functionsWithout(cellId);
        own.forEach(function -> all.put(function.name(), function));
        return new Definitions(cells, redefinitions, all);
    }

    private Map<String, OwnFunction> functionsWithout(String cellId) {
        Map<String, OwnFunction> left = new TreeMap<>(functions);
        left.values().removeIf(function -> function.cellId().equals(cellId));
        return left;
    }

    /** Functions of other languages that can be called, by name. */
    public Map<String, OwnFunction> functions() {
        return functions;
    }

    /** Whether a statement adds, keeps or takes away something, whatever else it asks; all others only ask. */
    public static boolean changes(Statement statement) {
        return statement instanceof Forget || Entry.isKept(statement);
    }

    /** Takes away the statement that makes a name; a note tells if none does. */
    public Change forget(String name) {
        Entry entry = byName.get(name);
        return entry == null
                ? new Change(this, List.of(CellRun.nothingToForget(this, name, null)))
                : new Change(without(entry), List.of());
    }

    /**
     * For a question such as {@code what-if} or an option: the same, with other definitions in place of those of their
     * names and nothing said about it. Ranges are kept where the new definition has none.
     */
    public Definitions changed(SourceText source, List<Definition> differences) {
        Definitions changed = this;
        for (Definition difference : differences) {
            Entry old = changed.byName.get(difference.name().text());
            Map<String, List<Entry>> cellsThen = new LinkedHashMap<>(changed.cells);
            Entry entry = new Entry(old == null ? "" : old.cellId(), source, difference, old);
            List<Entry> cell = new ArrayList<>(cellsThen.getOrDefault(entry.cellId(), List.of()));
            if (old == null) {
                cell.add(entry);
            } else {
                cell.replaceAll(other -> other.equals(old) ? entry : other);
            }
            cellsThen.put(entry.cellId(), cell);
            changed = new Definitions(cellsThen, redefinitions, functions);
        }
        return changed;
    }

    /** All statements that hold. */
    public List<Entry> entries() {
        return cells.values().stream().flatMap(List::stream).toList();
    }

    /** The statement that makes a name. */
    public Optional<Entry> find(String name) {
        return Optional.ofNullable(byName.get(name));
    }

    public Optional<Kind> kind(String name) {
        return Optional.ofNullable(made.get(name)).map(Made::kind);
    }

    /** All names that are made, in alphabetical order. */
    public Set<String> names() {
        return new TreeSet<>(byName.keySet());
    }

    /** The names of some kind, in alphabetical order. */
    public List<String> names(Kind kind) {
        return made.values().stream()
                .filter(name -> name.kind() == kind)
                .map(Made::name)
                .sorted()
                .toList();
    }

    public Optional<String> title() {
        return of(Title.class).map(entry -> ((Title) entry.statement()).text()).reduce((first, second) -> second);
    }

    /** The conditions asked for with {@code require}. */
    public List<Entry> requirements() {
        return of(Require.class).toList();
    }

    /** The limits of checks that are the user's own. */
    public List<Entry> limits() {
        return of(Limit.class).toList();
    }

    public List<Entry> options() {
        return of(Option.class).toList();
    }

    public List<Entry> measured() {
        return of(Measured.class).toList();
    }

    /** What came to mean something else, the earliest first. */
    public List<Redefinition> redefinitions() {
        return redefinitions;
    }

    private Stream<Entry> of(Class<?> kind) {
        return entries().stream().filter(entry -> kind.isInstance(entry.statement()));
    }

    private Definitions without(Entry gone) {
        Map<String, List<Entry>> left = new LinkedHashMap<>();
        cells.forEach((cell, entries) -> left.put(
                cell, entries.stream().filter(entry -> !entry.equals(gone)).toList()));
        return new Definitions(left, redefinitions, functions);
    }

    Map<String, List<Entry>> cells() {
        return cells;
    }
}
