// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.resolve;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.material.Metal;
import bandwright.dsl.material.MetalCatalogue;
import bandwright.dsl.material.StoneCatalogue;
import bandwright.dsl.material.StoneMaterial;
import bandwright.dsl.model.Band;
import bandwright.dsl.model.Design;
import bandwright.dsl.model.Fault;
import bandwright.dsl.model.Groove;
import bandwright.dsl.model.OwnLimit;
import bandwright.dsl.model.Prongs;
import bandwright.dsl.model.Seats;
import bandwright.dsl.model.Section;
import bandwright.dsl.model.StoneRow;
import bandwright.dsl.resolve.expression.Evaluator;
import bandwright.dsl.resolve.expression.Measurer;
import bandwright.dsl.resolve.expression.Scope;
import bandwright.dsl.resolve.expression.Value;
import bandwright.dsl.source.Place;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.syntax.Argument;
import bandwright.dsl.syntax.Definition;
import bandwright.dsl.syntax.Expression;
import bandwright.dsl.syntax.Limit;
import bandwright.dsl.syntax.Measured;
import bandwright.dsl.syntax.Name;
import bandwright.dsl.syntax.Node;
import bandwright.dsl.syntax.Option;
import bandwright.dsl.syntax.Require;

/**
 * What a store of definitions means. Each thing is worked out when it is first asked for and then kept; the order of
 * asking changes nothing. Bands, rows, seats and prongs come by name, grooves and parts in the order in which they are
 * made: never in the order in which cells ran. Not for several threads at a time.
 */
public final class Resolution implements Design, Scope {
    /** Codes of diagnostics that name something nobody has defined yet. */
    private static final Set<String> WAITING =
            Set.of("not-defined-yet", "unknown-metal", "unknown-stone", "karat-without-recipe", "waits", "many-wait");

    private final Definitions definitions;
    private final Measurer measurer;
    private final KnownLimits limits;
    private final Map<String, Value> given;
    private final Memo memo = new Memo();
    /** Of what hangs on no given value: the same for all designs that differ in those alone, on whatever threads they are. */
    private final Map<String, Value> measures;

    private final Map<String, Value> ownMeasures = new HashMap<>();
    private final NameGraph graph;
    private final Dependencies dependencies;
    private final NameFaults faults;
    private final PartOrder order;

    /** A design whose checks nobody asks for. */
    public Resolution(Definitions definitions, Measurer measurer) {
        this(definitions, measurer, KnownLimits.NONE);
    }

    public Resolution(Definitions definitions, Measurer measurer, KnownLimits limits) {
        this(definitions, measurer, limits, Map.of(), new NameGraph(definitions), new ConcurrentHashMap<>());
    }

    private Resolution(
            Definitions definitions,
            Measurer measurer,
            KnownLimits limits,
            Map<String, Value> given,
            NameGraph graph,
            Map<String, Value> measures) {
        this.definitions = definitions;
        this.measurer = measurer;
        this.limits = limits;
        this.given = new LinkedHashMap<>(given);
        this.measures = measures;
        this.graph = graph;
        this.dependencies = new Dependencies(definitions, graph, this.given);
        this.faults = new NameFaults(definitions);
        this.order = new PartOrder(definitions);
    }

    /** Whether a diagnostic says that something is not there yet, which is no error of the cell. */
    public static boolean isWaiting(Diagnostic diagnostic) {
        return WAITING.contains(diagnostic.code());
    }

    public Definitions definitions() {
        return definitions;
    }

    /** All words that can be asked of a part or a row. */
    public List<String> measureWords() {
        return measurer.words();
    }

    /** The same design with some definitions worth something else, for {@code vary} and {@code find}. */
    public Resolution withValues(Map<String, Value> values) {
        Map<String, Value> all = new LinkedHashMap<>(given);
        all.putAll(values);
        return new Resolution(definitions, measurer, limits, all, graph, measures);
    }

    /** The same design with other definitions in place of those of their names, and further ones beside them, for a question. */
    public Resolution withDefinitions(SourceText source, List<Definition> differences) {
        Definitions changed = definitions.changed(source, differences);
        return new Resolution(changed, measurer, limits, given, new NameGraph(changed), new ConcurrentHashMap<>());
    }

    /** What a definition is worth, where the name of one must stand; throws the fault that says why it is worth nothing. */
    public Value definitionNamed(Name name, SourceText source) {
        return new Names(this).definition(name, source);
    }

    /** The name of a part, where one must stand; what makes the part must itself be sound. */
    public String partNamed(Name name, SourceText source) {
        return new Names(this).part(name, source);
    }

    /** The metal of a name, built in or the user's own, where one must stand. */
    public Metal metalNamed(Name name, SourceText source) {
        return new Names(this).metal(name, source);
    }

    /** The name of a row of stones, where one must stand; what makes the row must itself be sound. */
    public String rowNamed(Name name, SourceText source) {
        return new Names(this).row(name, source).name();
    }

    /** All that is wrong with any statement, each once, in the order of the store. Never throws. */
    public List<Diagnostic> problems() {
        return Checkup.problems(this, entry -> true);
    }

    /** All that is wrong with what makes the ring: what is required, limited, measured or optional is not looked at. Never throws. */
    public List<Diagnostic> problemsOfTheRing() {
        return Checkup.problems(
                this,
                entry -> !(entry.statement() instanceof Require
                        || entry.statement() instanceof Limit
                        || entry.statement() instanceof Measured
                        || entry.statement() instanceof Option));
    }

    /** Names that a name depends on, however far away, known or not; for a part, all that changes it. */
    public Set<String> dependencies(String name) {
        return dependencies.of(name);
    }

    /** The functions of other languages that a text may call, each with its version. */
    public List<String> functionsIn(String text) {
        return dependencies.functions(List.of(text)).toList();
    }

    /** Names that an expression or a statement depends on. */
    public Set<String> dependencies(Node node) {
        return dependencies.of(node);
    }

    /** Names that stand in an expression or a statement itself. */
    public Set<String> namesIn(Node node) {
        return NamesUsed.in(node);
    }

    /** Sixteen hexadecimal digits that change when the meaning of a name may have changed. */
    public String fingerprint(String name) {
        return dependencies.fingerprint(name);
    }

    /** Sixteen hexadecimal digits that change when the ring changes; the order of cells does not show. */
    public String fingerprint() {
        return dependencies.fingerprint();
    }

    /** What an expression is worth; throws the fault that says why it is worth nothing. */
    public Value evaluate(Expression expression, SourceText source) {
        try {
            return new Evaluator(this, source).evaluate(expression);
        } catch (StackOverflowError tooDeep) {
            throw Memo.chainTooLong();
        }
    }

    /** What a definition is worth; throws the fault that says why it is worth nothing. */
    public Value valueOf(String name) {
        Optional<Entry> entry = definitions.find(name);
        if (entry.isEmpty()) {
            Value value = given.get(name);
            if (value != null) {
                return value;
            }
            throw faults.undefined(name, null);
        }
        Kind kind = definitions.kind(name).orElseThrow();
        return switch (kind) {
            case DEFINITION ->
                make(
                        name,
                        Value.class,
                        () -> new DefinitionReader(this, entry.get()).read(Optional.ofNullable(given.get(name))));
            case METAL -> new Value.MetalValue(ownMetal(entry.get()));
            case STONE_MATERIAL -> new Value.StoneValue(ownStone(entry.get()));
            case PROFILE, BAND, GROOVE, KEPT_PART, COLLAR, PIECE, SEATS, STONE_ROW, PRONGS, OPTION ->
                throw faults.wrongKind(name, kind, "a value", null);
        };
    }

    /** The range of a definition, if it is one and has one; throws the fault of a range that cannot be worked out. */
    public Optional<Handle> handle(String name) {
        return definitions
                .find(name)
                .filter(entry -> entry.statement() instanceof Definition)
                .flatMap(entry -> new DefinitionReader(this, entry).handle());
    }

    @Override
    public Value value(Name name, SourceText source) {
        Place place = source.place(name.span());
        String text = name.text();
        Optional<Kind> kind = definitions.kind(text);
        if (name.isRing()) {
            throw new Fault(Diagnostic.error("ring-is-no-value", place).build());
        } else if (kind.isEmpty() && !given.containsKey(text)) {
            return builtIn(text).orElseThrow(() -> faults.undefined(text, place));
        } else if (kind.filter(known -> !isValue(known)).isPresent()) {
            throw faults.wrongKind(text, kind.get(), "a value", place);
        }
        return through(name, source, () -> valueOf(text));
    }

    static boolean isValue(Kind kind) {
        return kind == Kind.DEFINITION || kind == Kind.METAL || kind == Kind.STONE_MATERIAL;
    }

    private static Optional<Value> builtIn(String name) {
        Optional<Value> metal = MetalCatalogue.find(name).map(Value.MetalValue::new);
        return metal.isPresent() ? metal : StoneCatalogue.find(name).map(Value.StoneValue::new);
    }

    @Override
    public Optional<Place> definedAt(String name) {
        return definitions.find(name).map(Entry::place);
    }

    @Override
    public boolean isMeasured(String name) {
        return name.equals(Name.RING)
                || definitions.kind(name).filter(kind -> !isValue(kind)).isPresent();
    }

    @Override
    public Value measure(Expression.Call call, SourceText source) {
        OwnFunction function = definitions.functions().get(call.function().text());
        if (function != null) {
            List<Expression> arguments =
                    call.arguments().stream().map(Argument::value).toList();
            return function.body().value(new Evaluator(this, source).values(arguments));
        }
        return new MeasureCall(this, measurer, memo, call, source).value();
    }

    /** A measure, taken once: a design does not change. */
    Value measured(String subject, String call, Supplier<Value> measure) {
        Map<String, Value> known = hangsOnGiven(subject) ? ownMeasures : measures;
        Value value = known.get(call);
        if (value == null) {
            value = measure.get();
            known.put(call, value);
        }
        return value;
    }

    private boolean hangsOnGiven(String subject) {
        return given.containsKey(subject)
                || (!given.isEmpty() && !Collections.disjoint(dependencies.of(subject), given.keySet()));
    }

    /** The whole design for {@code ring}, else what a name depends on. */
    public Design around(String subject) {
        if (subject.equals(Name.RING)) {
            return this;
        }
        Set<String> names = new LinkedHashSet<>(dependencies.of(subject));
        names.add(subject);
        return new SomeOf(this, names);
    }

    /**
     * The limits of checks that are the user's own.
     *
     * @throws Fault if one of them cannot be read
     */
    public List<OwnLimit> ownLimits() {
        return definitions.limits().stream().map(this::ownLimit).toList();
    }

    OwnLimit ownLimit(Entry entry) {
        return new LimitReader(this, entry, limits).limit();
    }

    /** What the user's own limits say, as a text that changes when one of them may have changed. */
    public String fingerprintOfLimits() {
        return dependencies.fingerprint(definitions.limits());
    }

    @Override
    public Optional<String> title() {
        return definitions.title();
    }

    @Override
    public List<Band> bands() {
        return bands(name -> true);
    }

    @Override
    public List<Groove> grooves() {
        return grooves(name -> true);
    }

    @Override
    public List<StoneRow> stoneRows() {
        return stoneRows(name -> true);
    }

    @Override
    public List<Seats> seats() {
        return seats(name -> true);
    }

    @Override
    public List<Prongs> prongs() {
        return prongs(name -> true);
    }

    @Override
    public List<String> parts() {
        return List.copyOf(order.parts());
    }

    List<Band> bands(Predicate<String> kept) {
        return all(definitions.names(Kind.BAND), kept, this::band);
    }

    List<Groove> grooves(Predicate<String> kept) {
        return all(order.grooves(), kept, this::groove);
    }

    List<StoneRow> stoneRows(Predicate<String> kept) {
        return all(definitions.names(Kind.STONE_ROW), kept, this::stoneRow);
    }

    List<Seats> seats(Predicate<String> kept) {
        return all(definitions.names(Kind.SEATS), kept, this::seatsNamed);
    }

    List<Prongs> prongs(Predicate<String> kept) {
        return all(definitions.names(Kind.PRONGS), kept, this::prongsNamed);
    }

    private static <T> List<T> all(List<String> names, Predicate<String> kept, Function<String, T> maker) {
        List<T> all = new ArrayList<>();
        names.stream().filter(kept).forEach(name -> all.add(maker.apply(name)));
        return List.copyOf(all);
    }

    Band band(String name) {
        return make(name, Band.class, () -> new BandReader(this, entry(name)).band());
    }

    Groove groove(String name) {
        return make(name, Groove.class, () -> new GrooveReader(this, entry(name)).groove());
    }

    StoneRow stoneRow(String name) {
        return make(name, StoneRow.class, () -> new StoneRowReader(this, entry(name)).row());
    }

    Seats seatsNamed(String name) {
        return make(name, Seats.class, () -> new SeatsReader(this, entry(name)).seats());
    }

    Prongs prongsNamed(String name) {
        return make(name, Prongs.class, () -> new ProngsReader(this, entry(name)).prongs());
    }

    Section section(String name) {
        return make(name, Section.class, () -> new ProfileReader(this, entry(name)).section());
    }

    Metal ownMetal(Entry entry) {
        return make(entry.made().get(0).name(), Metal.class, () -> new MaterialReader(this, entry).metal());
    }

    StoneMaterial ownStone(Entry entry) {
        return make(entry.made().get(0).name(), StoneMaterial.class, () -> new MaterialReader(this, entry).stone());
    }

    /** {@inheritDoc} Collars and pieces are of the metal they are cut from. */
    @Override
    public Metal metal(String part) {
        Kind kind = definitions.kind(part).orElseThrow(() -> faults.undefined(part, null));
        Entry entry = entry(part);
        return switch (kind) {
            case BAND -> make("metal of " + part, Metal.class, () -> new BandReader(this, entry).metal());
            case KEPT_PART, COLLAR, PIECE ->
                make("metal of " + part, Metal.class, () -> new GrooveReader(this, entry).metal(kind));
            case DEFINITION, PROFILE, GROOVE, SEATS, STONE_ROW, PRONGS, METAL, STONE_MATERIAL, OPTION ->
                throw faults.wrongKind(part, kind, "a part", null);
        };
    }

    /** Whether anything is known by that name, defined or built in. */
    public boolean isKnown(String name) {
        return definitions.kind(name).isPresent()
                || given.containsKey(name)
                || builtIn(name).isPresent();
    }

    /** What a name gives; where that cannot be made, whoever needs it waits, unless both are in one loop. */
    <T> T through(Name name, SourceText source, Supplier<T> made) {
        try {
            return made.get();
        } catch (Fault fault) {
            List<Diagnostic> shared = memo.shared(fault);
            throw shared.isEmpty() ? NameFaults.waits(name, source, fault) : new Fault(shared);
        }
    }

    Entry entry(String name) {
        return definitions.find(name).orElseThrow(() -> faults.undefined(name, null));
    }

    private <T> T make(String name, Class<T> type, Supplier<T> maker) {
        return memo.make(name, type, faults::loop, maker);
    }
}
