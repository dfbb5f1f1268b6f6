// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.explore;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.construct.Workshop;
import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.model.Fault;
import bandwright.dsl.resolve.Handle;
import bandwright.dsl.resolve.Resolution;
import bandwright.dsl.resolve.expression.Value;
import bandwright.dsl.source.Place;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.syntax.Expression;
import bandwright.dsl.syntax.Extreme;
import bandwright.dsl.syntax.Find;

/**
 * Solves one handle for a goal, on the steps of its range.
 *
 * <ol>
 *   <li>Nine steps spread over the range are tried side by side.
 *   <li>If the goal holds at some, the one nearest to the end that is asked for is taken, and the gap to its neighbour on that side,
 *       where the goal does not hold, is halved until they are one step apart.
 *   <li>If it holds at none, the gaps beside the one that misses by least are spread over in the same way, until they are one step
 *       wide.
 * </ol>
 */
final class Finding {
    private static final int SPREAD = 9;

    private final Resolution design;
    private final SourceText source;
    private final Find find;
    private final Heard heard;
    private final Goal goal;
    private final Handle handle;
    private final Scale scale;
    private final double low;
    private final double step;
    private final int last;
    private final Question question;
    private final VariantWorker worker;
    /** By step of the range, in the order in which they were tried. */
    private final Map<Integer, Trial> tried = new LinkedHashMap<>();

    /** @param missedBy as a share of the limit; 0 where the goal holds */
    record Trial(Value value, Variant variant, boolean holds, double missedBy) {}

    Finding(Resolution design, Workshop workshop, SourceText source, Heard heard, Find find) {
        this.design = design;
        this.source = source;
        this.find = find;
        this.heard = heard;
        String name = find.handle().text();
        Place place = source.place(find.handle().span());
        design.definitionNamed(find.handle(), source);
        handle = design.handle(name)
                .orElseThrow(() -> new Fault(
                        Diagnostic.error("nothing-to-search", place).with(name).build()));
        scale = new Scale(handle.low());
        low = scale.number(handle.low());
        double length = scale.number(handle.high()) - low;
        step = handle.step().map(Scale::step).orElseGet(() -> scale.fineStep(length));
        double steps = Math.floor(length / step + 1e-9);
        if (steps + 1 > AxisReader.MOST) {
            throw new Fault(Diagnostic.error("too-many-variants", place)
                    .with(Texts.count(steps + 1), Texts.count(AxisReader.MOST))
                    .build());
        }
        last = (int) steps;
        goal = new Goal(find.condition());
        question = question();
        worker = new VariantWorker(question, workshop, Set.of(name));
    }

    /** What is compared, then the condition itself. */
    private Question question() {
        Expression condition = find.condition();
        List<Question.Item> items = new ArrayList<>();
        goal.compared().forEach((label, expression) -> items.add(new Question.Item(label, expression)));
        items.add(new Question.Item("", condition));
        Question all = new Question(design, items, source);
        String name = find.handle().text();
        if (all.dependingOn(condition, Set.of(name)).isEmpty()) {
            // A name that nothing defines hangs on nothing: that is what is wrong then.
            design.evaluate(condition, source);
            throw new Fault(Diagnostic.error("goal-without-handle", source.place(condition.span()))
                    .with(name)
                    .build());
        }
        return all;
    }

    Found found() {
        refuseOtherKinds();
        tryOut(spread(0, last));
        worker.refuseHopeless(tried.values().stream().map(Trial::variant).toList());
        Integer best = best();
        while (best == null && closeIn()) {
            best = best();
        }
        Trial answer = best == null ? null : trial(halve(best));
        return new FindReport(find, question, handle, steps(), List.copyOf(tried.values()), answer).found();
    }

    private String steps() {
        Value width = scale.sample() instanceof Value.Size ? Value.number(step) : scale.value(step);
        return "steps of " + width.text() + " from " + handle.low().text() + " to "
                + handle.high().text();
    }

    private void refuseOtherKinds() {
        Value now;
        try {
            now = design.evaluate(find.condition(), source);
        } catch (Fault fault) {
            // It has no value now; whether it has one elsewhere is seen when the range is tried.
            return;
        }
        if (!(now instanceof Value.Truth)) {
            Place place = source.place(find.condition().span());
            throw new Fault(Diagnostic.error("wrong-kind", place)
                    .with("true or false", now.kind())
                    .label(place, now.kind())
                    .build());
        }
    }

    private static List<Integer> spread(int from, int to) {
        Set<Integer> steps = new LinkedHashSet<>();
        for (int i = 0; i < SPREAD; i++) {
            steps.add(from + (int) Math.round((double) i * (to - from) / (SPREAD - 1)));
        }
        return List.copyOf(steps);
    }

    /** Of the steps at which the goal holds, the one nearest to the end that is asked for. */
    private @Nullable Integer best() {
        Integer best = null;
        for (Map.Entry<Integer, Trial> entry : tried.entrySet()) {
            if (entry.getValue().holds() && (best == null || direction() * (entry.getKey() - best) > 0)) {
                best = entry.getKey();
            }
        }
        return best;
    }

    private int direction() {
        return find.extreme() == Extreme.LARGEST ? 1 : -1;
    }

    /** Moves on from a step at which the goal holds to the last before it fails. */
    private int halve(int best) {
        int holds = best;
        int fails = neighbour(best, direction());
        if (fails == best) {
            return best;
        }
        while (Math.abs(fails - holds) > 1) {
            int middle = (holds + fails) / 2;
            tryOut(List.of(middle));
            if (trial(middle).holds()) {
                holds = middle;
            } else {
                fails = middle;
            }
        }
        return holds;
    }

    /** Looks more closely about the step that misses by least; false if there is nothing left to look at. */
    private boolean closeIn() {
        int closest = 0;
        for (Map.Entry<Integer, Trial> entry : tried.entrySet()) {
            if (entry.getValue().missedBy() < trial(closest).missedBy()) {
                closest = entry.getKey();
            }
        }
        List<Integer> steps = new ArrayList<>(spread(neighbour(closest, -1), closest));
        steps.addAll(spread(closest, neighbour(closest, 1)));
        steps.removeIf(tried::containsKey);
        tryOut(steps.stream().distinct().toList());
        return !steps.isEmpty();
    }

    /** The nearest step tried on one side of another; itself if there is none. */
    private int neighbour(int of, int direction) {
        return tried.keySet().stream()
                .filter(other -> direction * (other - of) > 0)
                .min(Comparator.comparing((Integer other) -> direction * (other - of)))
                .orElse(of);
    }

    private void tryOut(List<Integer> steps) {
        Place place = source.place(find.span());
        List<Variant> variants =
                SideBySide.work(steps.size(), number -> worker.work(values(steps.get(number))), heard, place);
        for (int i = 0; i < steps.size(); i++) {
            tried.put(steps.get(i), trial(scale.value(low + steps.get(i) * step), variants.get(i)));
        }
    }

    private Trial trial(int step) {
        return Objects.requireNonNull(tried.get(step), "not tried yet");
    }

    private Trial trial(Value value, Variant variant) {
        int condition = variant.values().size() - 1;
        boolean holds = variant.values().get(condition).orElse(null) instanceof Value.Truth truth && truth.holds();
        Map<String, Value> compared = new LinkedHashMap<>();
        for (int i = 0; i < condition; i++) {
            String label = question.items().get(i).label();
            variant.values().get(i).ifPresent(known -> compared.put(label, known));
        }
        return new Trial(value, variant, holds, holds ? 0 : goal.missedBy(compared));
    }

    private Map<String, Value> values(int number) {
        return Map.of(find.handle().text(), scale.value(low + number * step));
    }
}
