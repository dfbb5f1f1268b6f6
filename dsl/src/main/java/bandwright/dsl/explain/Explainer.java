// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.explain;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import bandwright.dsl.construct.Workshop;
import bandwright.dsl.material.MetalCatalogue;
import bandwright.dsl.quantity.FingerSize;
import bandwright.dsl.resolve.Entry;
import bandwright.dsl.resolve.Kind;
import bandwright.dsl.resolve.Resolution;
import bandwright.dsl.resolve.expression.Value;
import bandwright.dsl.source.Place;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.syntax.Argument;
import bandwright.dsl.syntax.Definition;
import bandwright.dsl.syntax.Expression;
import bandwright.dsl.syntax.MetalDefinition;
import bandwright.dsl.syntax.Printer;

/**
 * Explains expressions: each is shown with the values of its names and measures put in, and those are then explained in turn. A
 * definition is explained where it is met first and only named after that.
 */
public final class Explainer {
    private final Resolution design;
    private final MeasureReasons measures;
    private final Set<String> told = new LinkedHashSet<>();

    public Explainer(Resolution design, Workshop workshop) {
        this.design = design;
        this.measures = new MeasureReasons(design, workshop, this::named, this::size);
    }

    /** Throws the fault that says why there is no value to explain. */
    public Explanation explain(Expression expression, SourceText source) {
        return new Explanation(step(expression, source));
    }

    private Step step(Expression expression, SourceText source) {
        if (expression instanceof Expression.Reference reference) {
            return named(reference.name().text());
        } else if (expression instanceof Expression.Call call) {
            return called(call, source);
        }
        String value = design.evaluate(expression, source).text();
        List<Expression> leaves = new ArrayList<>();
        String filled = filled(expression, source, leaves);
        String said = Printer.print(expression);
        String text = said.equals(filled) ? said + equal(said, value) : said + " = " + filled + equal(filled, value);
        return new Step(text, "", parts(leaves, source));
    }

    /** {@code 4.6 mm} needs no {@code = 4.6 mm}. */
    private static String equal(String said, String value) {
        return said.equals(value) ? "" : " = " + value;
    }

    /** An expression with values in place of its names and calls, which are gathered. */
    private String filled(Expression expression, SourceText source, List<Expression> leaves) {
        return Printer.print(expression, part -> {
            boolean leaf =
                    part != expression && (part instanceof Expression.Reference || part instanceof Expression.Call);
            if (!leaf) {
                return Optional.empty();
            }
            leaves.add(part);
            String value = design.evaluate(part, source).text();
            return Optional.of(value.startsWith("-") ? "(" + value + ")" : value);
        });
    }

    private List<Step> parts(List<Expression> leaves, SourceText source) {
        // The same name twice in a formula is one thing to explain.
        return leaves.stream()
                .collect(Collectors.toMap(Printer::print, leaf -> leaf, (first, again) -> first, LinkedHashMap::new))
                .values()
                .stream()
                .map(leaf -> step(leaf, source))
                .toList();
    }

    private Step called(Expression.Call call, SourceText source) {
        Value value = design.evaluate(call, source);
        String word = call.function().text();
        Optional<Step> measured = subject(call).flatMap(subject -> measures.of(call, word, subject, value));
        if (measured.isPresent()) {
            return measured.get();
        }
        List<Expression> leaves = new ArrayList<>();
        String said = Printer.print(call);
        String filled = filled(call, source, leaves);
        String text = said + (said.equals(filled) ? "" : " = " + filled) + " = " + value.text();
        return new Step(text, "", withSizes(call, source, parts(leaves, source)));
    }

    /** A function of a finger size rests on its system's formula, also where the size stands there itself. */
    private List<Step> withSizes(Expression.Call call, SourceText source, List<Step> parts) {
        List<Step> all = new ArrayList<>(parts);
        for (Argument argument : call.arguments()) {
            if (argument.value() instanceof Expression.SizeLiteral
                    && design.evaluate(argument.value(), source) instanceof Value.Size size) {
                size(size.size()).ifPresent(all::add);
            }
        }
        return all;
    }

    private static Optional<String> subject(Expression.Call call) {
        return call.arguments().isEmpty()
                        || !(call.arguments().get(0).value() instanceof Expression.Reference reference)
                ? Optional.empty()
                : Optional.of(reference.name().text());
    }

    /** A definition with its place and reason; a metal or stone with its data. */
    private Step named(String name) {
        Optional<Entry> entry = design.definitions().find(name);
        if (entry.isEmpty() || !(entry.get().statement() instanceof Definition definition)) {
            return entry.map(made -> made(name, made))
                    .orElseGet(() ->
                            MetalCatalogue.find(name).map(MetalReason::of).orElseGet(() -> Step.of(name, "built in")));
        }
        Value value = design.valueOf(name);
        if (!told.add(name)) {
            return Step.of(name + " = " + value.text(), "see above");
        }
        List<Expression> leaves = new ArrayList<>();
        String said = Printer.print(definition.value());
        String filled;
        List<Step> parts;
        if (definition.value() instanceof Expression.Reference || definition.value() instanceof Expression.Call) {
            filled = said;
            leaves.add(definition.value());
        } else {
            filled = filled(definition.value(), entry.get().source(), leaves);
        }
        parts = new ArrayList<>(parts(leaves, entry.get().source()));
        if (value instanceof Value.Size size) {
            size(size.size()).ifPresent(parts::add);
        }
        String text = name + " = " + said + (said.equals(filled) ? "" : " = " + filled) + equal(filled, value.text());
        return new Step(text, where(entry.get()), parts);
    }

    /** A statement that makes something, and what it rests on. */
    private Step made(String name, Entry entry) {
        if (!told.add(name)) {
            return Step.of(name, "see above");
        }
        String text = entry.text().strip().replaceAll("\\s+", " ");
        List<Step> parts = new ArrayList<>();
        // Profiles first, so that what only a profile uses is told below it.
        for (Kind wanted : List.of(Kind.PROFILE, Kind.DEFINITION)) {
            for (String used : design.dependencies(name)) {
                if (design.definitions().kind(used).orElse(null) == wanted && !told.contains(used)) {
                    parts.add(named(used));
                }
            }
        }
        if (entry.statement() instanceof MetalDefinition statement) {
            MetalReason.mixing(design.metalNamed(statement.name(), entry.source()))
                    .ifPresent(parts::add);
        }
        return new Step(text, where(entry), parts);
    }

    private Optional<Step> size(FingerSize size) {
        return told.add("size " + size.text()) ? Optional.of(SizeReason.of(size)) : Optional.empty();
    }

    private static String where(Entry entry) {
        Place place = entry.place();
        String because =
                entry.because().map(reason -> "; because \"" + reason + "\"").orElse("");
        return place.source().name() + ", line " + place.line() + because;
    }
}
