// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.explore;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.model.Fault;
import bandwright.dsl.resolve.Handle;
import bandwright.dsl.resolve.Resolution;
import bandwright.dsl.resolve.expression.Faults;
import bandwright.dsl.resolve.expression.Value;
import bandwright.dsl.source.Place;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.syntax.Axis;
import bandwright.dsl.syntax.Expression;
import bandwright.dsl.syntax.Node;

/** Reads what {@code vary} varies: names of definitions, and values of their kind. Values are worked out in the design as it is. */
final class AxisReader {
    /** More values, or combinations, than anybody looks through. */
    static final int MOST = 100_000;

    private static final int EVEN_VALUES = 9;

    private final Resolution design;
    private final SourceText source;
    private final long most;

    AxisReader(Resolution design, SourceText source) {
        this(design, source, MOST);
    }

    /** @param most combinations that may be asked for */
    AxisReader(Resolution design, SourceText source, long most) {
        this.design = design;
        this.source = source;
        this.most = most;
    }

    /** All axes; the faults of all of them are told. No more combinations than may be asked for. */
    List<VariedAxis> read(List<Axis> axes, Node statement) {
        Faults faults = new Faults();
        List<VariedAxis> read = new ArrayList<>();
        Set<String> names = new LinkedHashSet<>();
        for (Axis axis : axes) {
            if (!names.add(axis.name().text())) {
                faults.add(Diagnostic.error("named-twice", place(axis.name()))
                        .with(axis.name().text()));
            }
            faults.attempt(() -> read(axis)).ifPresent(read::add);
        }
        faults.raise();
        double count = 1;
        for (VariedAxis axis : read) {
            count *= axis.values().size();
        }
        if (count > most) {
            throw tooMany(count, most, place(statement));
        }
        return read;
    }

    private VariedAxis read(Axis axis) {
        String name = axis.name().text();
        Value now = design.definitionNamed(axis.name(), source);
        if (axis instanceof Axis.Stretch stretch) {
            return new VariedAxis(name, stretch(stretch, now));
        } else if (axis instanceof Axis.Values over) {
            Faults faults = new Faults();
            List<Value> values = new ArrayList<>();
            over.values()
                    .forEach(value ->
                            faults.attempt(() -> given(name, value, now)).ifPresent(values::add));
            faults.raise();
            return new VariedAxis(name, values);
        }
        Place place = place(axis.name());
        Handle handle = design.handle(name)
                .orElseThrow(() ->
                        new Fault(Diagnostic.error("no-range", place).with(name).build()));
        return new VariedAxis(name, values(new Scale(handle.low()), handle.low(), handle.high(), handle.step(), place));
    }

    /** A value to stand in for a definition's, which must be of its kind. */
    Value given(String name, Expression expression, Value now) {
        Value value = design.evaluate(expression, source);
        if (!value.kind().equals(now.kind())) {
            throw new Fault(Diagnostic.error("given-wrong-kind", place(expression))
                    .with(name, now.kind(), value.kind())
                    .build());
        }
        return value;
    }

    private List<Value> stretch(Axis.Stretch stretch, Value now) {
        String name = stretch.name().text();
        if (!Scale.has(now)) {
            throw new Fault(Diagnostic.error("no-stretch", place(stretch.name()))
                    .with(name, now.kind())
                    .build());
        }
        Faults faults = new Faults();
        Optional<Value> from = faults.attempt(() -> given(name, stretch.from(), now));
        Optional<Value> to = faults.attempt(() -> given(name, stretch.to(), now));
        Expression by = stretch.step();
        Optional<Value> step = by == null ? Optional.empty() : faults.attempt(() -> step(by, new Scale(now)));
        faults.raise();
        Scale scale = new Scale(from.orElseThrow());
        if (!(scale.number(from.get()) < scale.number(to.orElseThrow()))) {
            throw new Fault(Diagnostic.error("range-reversed", place(stretch))
                    .with(from.get().text(), to.get().text())
                    .label(place(stretch.from()), from.get().text())
                    .label(place(stretch.to()), to.get().text())
                    .build());
        }
        Optional<Value> own = step.isPresent() ? step : ownStep(name, scale);
        return values(scale, from.get(), to.get(), own, place(stretch));
    }

    private Optional<Value> ownStep(String name, Scale scale) {
        return design.handle(name)
                // Sizes of two systems have no step in common.
                .filter(handle -> !(handle.low() instanceof Value.Size low && scale.sample() instanceof Value.Size size)
                        || low.size().system() == size.size().system())
                .flatMap(Handle::step);
    }

    private Value step(Expression expression, Scale scale) {
        Value step = design.evaluate(expression, source);
        if (!scale.fitsStep(step)) {
            throw new Fault(Diagnostic.error("wrong-kind", place(expression))
                    .with(scale.stepWords(), step.kind())
                    .label(place(expression), step.kind())
                    .build());
        } else if (!(Scale.step(step) > 0)) {
            throw new Fault(Diagnostic.error("not-positive", place(expression))
                    .with("a step", step.text())
                    .build());
        }
        return step;
    }

    private static List<Value> values(Scale scale, Value low, Value high, Optional<Value> step, Place place) {
        double from = scale.number(low);
        double to = scale.number(high);
        double by = step.isPresent() ? Scale.step(step.get()) : (to - from) / (EVEN_VALUES - 1);
        if (!(by > 0)) {
            return List.of(low);
        }
        // The last value counts though rounding may have put it a hair too far.
        double steps = Math.floor((to - from) / by + 1e-9);
        if (steps + 1 > MOST) {
            throw tooMany(steps + 1, MOST, place);
        }
        List<Value> values = new ArrayList<>();
        for (int i = 0; i <= (int) steps; i++) {
            values.add(scale.value(from + i * by));
        }
        return values;
    }

    private static Fault tooMany(double count, long most, Place place) {
        return new Fault(Diagnostic.error("too-many-variants", place)
                .with(Texts.count(count), Texts.count((double) most))
                .build());
    }

    private Place place(Node node) {
        return source.place(node.span());
    }
}
