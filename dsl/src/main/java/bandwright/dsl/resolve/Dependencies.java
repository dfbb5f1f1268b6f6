// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.resolve;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Stream;

import bandwright.dsl.resolve.expression.Value;
import bandwright.dsl.syntax.Limit;
import bandwright.dsl.syntax.Measured;
import bandwright.dsl.syntax.Node;
import bandwright.dsl.syntax.Option;
import bandwright.dsl.syntax.Require;

/** Which names hang on which, and fingerprints of them, in a design some of whose definitions are given other values. */
final class Dependencies {
    private static final int DIGITS = 16;

    private final Definitions definitions;
    private final NameGraph graph;
    /** Values that stand in for definitions. */
    private final Map<String, Value> given;

    private final Map<String, String> fingerprints = new HashMap<>();

    Dependencies(Definitions definitions, NameGraph graph, Map<String, Value> given) {
        this.definitions = definitions;
        this.graph = graph;
        this.given = given;
    }

    /** Names that a name depends on, however far away, known or not; itself only if it is in a loop. */
    Set<String> of(String name) {
        return graph.of(name);
    }

    /** Names that a piece of text depends on. */
    Set<String> of(Node node) {
        return graph.of(node);
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
