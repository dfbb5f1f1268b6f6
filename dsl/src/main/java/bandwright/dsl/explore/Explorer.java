// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.explore;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import bandwright.dsl.construct.Workshop;
import bandwright.dsl.model.Fault;
import bandwright.dsl.resolve.Handle;
import bandwright.dsl.resolve.Resolution;
import bandwright.dsl.resolve.expression.Value;
import bandwright.dsl.source.Place;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.source.Span;
import bandwright.dsl.syntax.Expression;
import bandwright.dsl.syntax.Find;
import bandwright.dsl.syntax.Measured;
import bandwright.dsl.syntax.Node;
import bandwright.dsl.syntax.Option;
import bandwright.dsl.syntax.Vary;
import bandwright.dsl.syntax.WhatIf;
import bandwright.dsl.view.Table;

/**
 * Answers what a statement asks about other designs than the one that stands. What is wrong with the question is thrown as a
 * {@link Fault}; what is wrong with a variant stands in the answer.
 */
public final class Explorer {
    private final Resolution design;
    private final Workshop workshop;
    private final SourceText source;
    private final Heard heard;

    /** @param source the text in which the statements stand */
    public Explorer(Resolution design, Workshop workshop, SourceText source, Heard heard) {
        this.design = design;
        this.workshop = workshop;
        this.source = source;
        this.heard = heard;
    }

    /** Whether a fault says that the thread was interrupted. */
    public static boolean isInterrupt(Fault fault) {
        return fault.diagnostics().stream().anyMatch(told -> told.code().equals(SideBySide.INTERRUPTED));
    }

    public Varied vary(Vary vary) {
        List<VariedAxis> axes = new AxisReader(design, source).read(vary.axes(), vary);
        Question question = Question.of(design, vary.asked(), source, vary.span());
        return Varied.of(Variants.work(question, axes, workshop, heard, place(vary)));
    }

    /** As {@link #vary}, for more than anybody looks through: to be worked out row by row. */
    public Sweeping sweep(Vary plan) {
        return Sweeping.of(design, workshop, plan, source);
    }

    /** Before, after and difference. */
    public Table whatIf(WhatIf whatIf) {
        return new WhatIfs(design, workshop, source).table(whatIf);
    }

    /** An option beside the design; nothing as long as there is no ring. */
    public Optional<Table> option(Option option) {
        return design.bands().isEmpty()
                ? Optional.empty()
                : Optional.of(new Options(design, workshop, source).table(option));
    }

    /** The design and all options that are kept. */
    public Compared options(Span asked) {
        return new Options(design, workshop, source).all(asked);
    }

    public Found find(Find find) {
        return new Finding(design, workshop, source, heard, find).found();
    }

    /** The design's story: what was decided, why, and what it did. */
    public Table decisions(List<Chapter> story, Span asked) {
        return new Decisions(workshop, heard, source.place(asked)).table(story);
    }

    /** A real figure beside the computed one, and what would explain the difference. */
    public Table measured(Measured measured) {
        return new Measurements(design, workshop).table(measured, source);
    }

    /** All real figures that are kept. */
    public Optional<Table> measurements() {
        return new Measurements(design, workshop).all();
    }

    /** What was measured of an expression, in words. */
    public Optional<String> measuredOf(Expression expression) {
        return new Measurements(design, workshop).words(expression);
    }

    /** The step of a handle: its own, or the one it is searched in. */
    public static Value step(Handle handle) {
        Scale scale = new Scale(handle.low());
        double length = scale.number(handle.high()) - scale.number(handle.low());
        double step = handle.step().map(Scale::step).orElseGet(() -> scale.fineStep(length));
        return handle.low() instanceof Value.Size ? Value.number(step) : scale.value(step);
    }

    /** All values of a handle, {@link #step} apart, from its low end on; none if they are more than so many. */
    public static List<Value> stops(Handle handle, int most) {
        Scale scale = new Scale(handle.low());
        double low = scale.number(handle.low());
        double step = Scale.step(step(handle));
        double count = Math.floor((scale.number(handle.high()) - low) / step + 1e-9) + 1;
        return count > most
                ? List.of()
                : IntStream.range(0, (int) count)
                        .mapToObj(number -> scale.value(low + number * step))
                        .toList();
    }

    private Place place(Node node) {
        return source.place(node.span());
    }
}
