// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.resolve;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.model.Arc;
import bandwright.dsl.model.Fault;
import bandwright.dsl.quantity.Dimension;
import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.quantity.Unit;
import bandwright.dsl.resolve.expression.Faults;
import bandwright.dsl.resolve.expression.Value;
import bandwright.dsl.source.Place;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.syntax.Block;
import bandwright.dsl.syntax.Definition;
import bandwright.dsl.syntax.Expression;
import bandwright.dsl.syntax.Name;
import bandwright.dsl.syntax.Node;
import bandwright.dsl.syntax.Property;

/** Reads the properties of one statement, and gathers all that is wrong with them. */
abstract class Reader {
    /** Smaller than this, in mm, a size is nothing; larger than this it belongs to no ring. */
    private static final double NOTHING_MM = 1e-6;

    private static final double LARGEST_MM = 1000;

    /** What people call the commonest arcs. */
    private static final Map<String, String> ARCS = Map.of(
            "half", "180 deg", "quarter", "90 deg", "third", "120 deg", "three-quarter", "270 deg", "all", "full");

    final Resolution design;
    final Entry entry;
    final SourceText source;
    final Names names;
    final Faults faults = new Faults();

    Reader(Resolution design, Entry entry) {
        this.design = design;
        this.entry = entry;
        this.source = entry.source();
        this.names = new Names(design);
    }

    final Place place(Node node) {
        return entry.place(node);
    }

    final String name() {
        return entry.made().get(0).name();
    }

    /** A size in mm; not-a-number if something is wrong with it, which is then told. */
    final double length(String what, Expression expression, Sign sign) {
        return amount(what, expression, Dimension.LENGTH, sign);
    }

    final double amount(String what, Expression expression, Dimension dimension, Sign sign) {
        return faults.number(() -> quantity(what, expression, dimension, sign).value());
    }

    private Quantity quantity(String what, Expression expression, Dimension dimension, Sign sign) {
        Value value = design.evaluate(expression, source);
        if (!(value instanceof Value.Amount amount)
                || !amount.quantity().dimension().equals(dimension)) {
            Diagnostic.Builder fault = Diagnostic.error("wrong-kind-of-size", place(expression))
                    .with(what, dimension.words(), value.kind());
            Optional<Entry> definition = definition(expression);
            Expression said =
                    definition.map(of -> ((Definition) of.statement()).value()).orElse(expression);
            Place at = definition.map(of -> of.place(said)).orElse(place(expression));
            // Where a name stands, the slip is where that is defined.
            if (definition.isPresent()) {
                fault.label(place(expression), "");
            }
            fault.label(at, value.kind());
            usualUnit(dimension)
                    .filter(unit -> said.isBareNumber())
                    .ifPresent(unit -> fault.suggest(at, at.text() + " " + unit.symbol()));
            throw new Fault(fault.build());
        }
        Quantity quantity = amount.quantity();
        boolean isLength = dimension.equals(Dimension.LENGTH);
        if (isLength && Math.abs(quantity.value()) > LARGEST_MM) {
            throw new Fault(Diagnostic.error("larger-than-rings", place(expression))
                    .with(what, quantity.toString(), millimetres(LARGEST_MM))
                    .build());
        } else if (sign == Sign.POSITIVE && !(quantity.value() > (isLength ? NOTHING_MM : 0))) {
            throw new Fault(Diagnostic.error("not-positive", place(expression))
                    .with(what, quantity.toString())
                    .build());
        } else if (sign == Sign.NOT_NEGATIVE && quantity.value() < 0) {
            throw new Fault(Diagnostic.error("negative", place(expression))
                    .with(what, quantity.toString())
                    .build());
        }
        return quantity;
    }

    /** The unit that a number without one is meant in. */
    private static Optional<Unit> usualUnit(Dimension dimension) {
        return dimension.equals(Dimension.LENGTH)
                ? Optional.of(Unit.MILLIMETRE)
                : dimension.equals(Dimension.ANGLE) ? Optional.of(Unit.DEGREE) : Optional.empty();
    }

    /** The definition that a name stands for. */
    final Optional<Entry> definition(Expression expression) {
        return expression instanceof Expression.Reference reference
                ? design.definitions()
                        .find(reference.name().text())
                        .filter(found -> found.statement() instanceof Definition)
                : Optional.empty();
    }

    /** The size a word gives in mm; if it is missing, that is told with an example. */
    final double required(Block<?> block, Property.Word word, Sign sign, String example) {
        Property.Amount amount = block.amount(word);
        if (amount == null) {
            missing(word.word(), example);
            return Double.NaN;
        }
        return length(word.word(), amount.value(), sign);
    }

    /** The size a word gives in mm, or nothing if it is not there. */
    final OptionalDouble optional(Block<?> block, Property.Word word, Sign sign) {
        Property.Amount amount = block.amount(word);
        return amount == null ? OptionalDouble.empty() : OptionalDouble.of(length(word.word(), amount.value(), sign));
    }

    final double otherwise(Block<?> block, Property.Word word, Sign sign, double otherwise) {
        return optional(block, word, sign).orElse(otherwise);
    }

    /** A whole number of things, at least one. */
    final int whole(Property.Amount amount) {
        double count = amount(amount.word(), amount.value(), Dimension.NUMBER, Sign.POSITIVE);
        if (Double.isFinite(count) && (count != Math.rint(count) || count > Short.MAX_VALUE)) {
            faults.add(Diagnostic.error("not-whole", place(amount.value()))
                    .with(amount.word(), Quantity.number(count).toString()));
        }
        return (int) count;
    }

    final void missing(String word, String example) {
        faults.add(Diagnostic.error("missing-property", entry.place())
                .with(word, name())
                .suggestLine(example));
    }

    /** Two properties that say the same thing in two ways. */
    final void oneOnly(Property first, Property second) {
        faults.add(Diagnostic.error("one-too-many", place(second))
                .with(first.word(), second.word())
                .label(place(first), first.word())
                .label(place(second), second.word()));
    }

    /** The arc a property takes; all round if there is none. */
    final Arc around(Property.@Nullable Around around) {
        Expression arc = around == null ? null : around.arc();
        if (around == null || arc == null) {
            return Arc.FULL;
        }
        if (arc instanceof Expression.Reference reference) {
            String word = reference.name().text();
            String degrees = ARCS.get(word);
            if (degrees != null && !design.isKnown(word)) {
                faults.add(Diagnostic.warning("not-defined-yet", place(arc))
                        .with(word)
                        .suggest(place(arc), degrees));
                return Arc.FULL;
            }
        }
        double degrees = amount("around", arc, Dimension.ANGLE, Sign.POSITIVE);
        if (degrees > 360) {
            faults.add(Diagnostic.error("more-than-round", place(arc))
                    .with(Quantity.degrees(degrees).toString()));
        }
        Expression centred = around.centred();
        double centre = centred == null ? 0 : wrapped(amount("centred", centred, Dimension.ANGLE, Sign.ANY));
        return new Arc(degrees, centre);
    }

    /** An angle as a place: from 0 up to 360 deg. */
    static double wrapped(double degrees) {
        double turns = Math.floor(degrees / 360);
        double left = degrees - 360 * turns;
        return left >= 360 ? 0 : left + 0.0;
    }

    /** The names of parts; none of them twice. */
    final List<String> parts(List<Name> parts) {
        for (int i = 0; i < parts.size(); i++) {
            Name name = parts.get(i);
            faults.attempt(() -> names.part(name, source));
            if (parts.subList(0, i).stream().anyMatch(other -> other.text().equals(name.text()))) {
                faults.add(Diagnostic.error("part-twice", place(name)).with(name.text()));
            }
        }
        return parts.stream().map(Name::text).toList();
    }

    static String millimetres(double value) {
        return Quantity.millimetres(value).toString();
    }
}
