// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.resolve;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Stream;

import bandwright.dsl.resolve.expression.Value;
import bandwright.dsl.syntax.Groove;
import bandwright.dsl.syntax.Limit;
import bandwright.dsl.syntax.Measured;
import bandwright.dsl.syntax.Name;
import bandwright.dsl.syntax.Node;
import bandwright.dsl.syntax.Option;
import bandwright.dsl.syntax.Prongs;
import bandwright.dsl.syntax.Require;
import bandwright.dsl.syntax.Seats;

/** Which names hang on which. A part hangs on all that is cut from it and added to it, too. */
final class Dependencies {
    private static final int DIGITS = 16;

    private final Definitions definitions;
    /** Values that stand in for definitions. */
    private final Map<String, Value> given;
    /** For a part, the names of the statements that change it. */
    private final Map<String, Set<String>> changes = new TreeMap<>();
    /** What was worked out already: many questions hang on the same names. */
    private final Map<String, Set<String>> nexts = new HashMap<>();

    private final Map<String, Set<String>> closures = new HashMap<>();
    private final Map<String, String> fingerprints = new HashMap<>();

    Dependencies(Definitions definitions, Map<String, Value> given) {
        this.definitions = definitions;
        this.given = given;
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

    /** Changes when the name's own text changes, or that of anything it depends on. */
    String fingerprint(String name) {
        String known = fingerprints.get(name);
        if (known == null) {
            known = fingerprintOf(name);
            fingerprints.put(name, known);
        }
        return known;
    }

    private String fingerprintOf(String name) {
        Set<String> names = new TreeSet<>(of(name));
        names.add(name);
        List<String> said = names.stream()
                .flatMap(each -> definitions.find(each).stream())
                .distinct()
                .map(Entry::text)
                .toList();
        return hash(Stream.concat(Stream.concat(said.stream(), functions(said)), given(names::contains)));
    }

    /** Changes when the text of one of several statements changes, or that of anything they depend on. */
    String fingerprint(List<Entry> entries) {
        Set<String> names = new TreeSet<>();
        entries.forEach(entry -> names.addAll(of(entry.statement())));
        Stream<String> said = Stream.concat(
                entries.stream().map(Entry::text), names.stream().map(name -> name + " " + fingerprint(name)));
        Stream<String> called = functions(entries.stream().map(Entry::text).toList());
        return hash(Stream.concat(Stream.concat(said, called), given(names::contains)));
    }

    /** Of all that makes the ring, title included; what is required, limited, measured or optional does not change a ring. */
    String fingerprint() {
        List<String> said = definitions.entries().stream()
                .filter(entry -> !(entry.statement() instanceof Require
                        || entry.statement() instanceof Limit
                        || entry.statement() instanceof Measured
                        || entry.statement() instanceof Option))
                .map(Entry::text)
                .toList();
        return hash(Stream.concat(Stream.concat(said.stream(), functions(said)), given(name -> true)));
    }

    /** The functions of other languages that some texts may call. */
    Stream<String> functions(List<String> texts) {
        return definitions.functions().values().stream()
                .filter(function -> texts.stream().anyMatch(text -> text.contains(function.name() + "(")))
                .map(function -> function.name() + " of version " + function.version());
    }

    private Stream<String> given(Predicate<String> kept) {
        return given.entrySet().stream()
                .filter(value -> kept.test(value.getKey()))
                .map(value -> value.getKey() + " given as " + exact(value.getValue()));
    }

    /** All digits of a value: what is shown is rounded, and two values must not pass for one. */
    private static String exact(Value value) {
        if (value instanceof Value.Amount amount) {
            return Double.toHexString(amount.quantity().value())
                    + amount.quantity().dimension().words();
        } else if (value instanceof Value.Size size) {
            return Double.toHexString(size.size().number())
                    + size.size().system().word();
        }
        return value.text();
    }

    private static String hash(Stream<String> texts) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            // Sorted: which cell ran first must not show.
            texts.sorted().forEach(text -> digest.update((text + "\0").getBytes(StandardCharsets.UTF_8)));
            return HexFormat.of().formatHex(digest.digest()).substring(0, DIGITS);
        } catch (NoSuchAlgorithmException failure) {
            throw new IllegalStateException("every Java has SHA-256", failure);
        }
    }
}
