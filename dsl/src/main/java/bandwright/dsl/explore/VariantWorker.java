// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.explore;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

import bandwright.dsl.construct.Workshop;
import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.model.Fault;
import bandwright.dsl.resolve.Entry;
import bandwright.dsl.resolve.Resolution;
import bandwright.dsl.resolve.expression.Value;
import bandwright.dsl.syntax.Expression;
import bandwright.dsl.syntax.Require;

/**
 * Works out variants of a design, each by itself. A value that hangs on some of the changed definitions only is worked out once
 * for all variants that agree on those. Serves any number of threads.
 */
final class VariantWorker {
    /** Some megabytes of values; a catalogue has more variants than memory holds. */
    private static final int REMEMBERED = 50_000;

    private final Question question;
    private final Workshop workshop;
    private final Set<String> changed;
    private final Set<Diagnostic> known;
    /** Whether anything of the ring may move; a change of price moves nothing, and then it need not be placed again. */
    private final boolean placesHangOnChanges;

    private final List<Entry> requirements;
    private final List<Set<String>> itemsHangOn;
    private final List<Set<String>> requirementsHangOn;
    /** Values shared by several variants. */
    private final Map<Shared, Result> shared = Collections.synchronizedMap(new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Shared, Result> eldest) {
            return size() > REMEMBERED;
        }
    });

    private record Shared(String what, int number, Map<String, Value> values) {}

    private record Result(Optional<Value> value, String reason) {}

    /** @param changed names of the definitions that vary */
    VariantWorker(Question question, Workshop workshop, Set<String> changed) {
        this.question = question;
        this.workshop = workshop;
        this.changed = Set.copyOf(changed);
        this.known = Set.copyOf(Soundness.faults(question.design(), workshop.ring(question.design())));
        this.placesHangOnChanges =
                changed.isEmpty() || !Collections.disjoint(Soundness.ringHangsOn(question.design()), changed);
        this.requirements = question.design().definitions().requirements();
        this.itemsHangOn = question.items().stream()
                .map(item -> question.dependingOn(item.expression(), changed))
                .toList();
        this.requirementsHangOn = requirements.stream()
                .map(entry -> question.dependingOn(((Require) entry.statement()).condition(), changed))
                .toList();
    }

    /**
     * What is asked may be wrong in itself, such as a weight added to a length: that is thrown when neither the design as it is nor
     * any of the variants has an answer, so that it is told once, at its place.
     */
    void refuseHopeless(List<Variant> worked) {
        for (int i = 0; i < question.items().size(); i++) {
            int item = i;
            try {
                question.design().evaluate(question.items().get(i).expression(), question.source());
            } catch (Fault fault) {
                if (worked.stream()
                        .allMatch(variant -> variant.values().get(item).isEmpty())) {
                    throw fault;
                }
            }
        }
    }

    /** The variant in which the changed definitions have these values. */
    Variant work(Map<String, Value> values) {
        return work(question.design().withValues(values), values);
    }

    /** The variant that a design is, for one whose changes are no mere values. */
    Variant work(Resolution design) {
        return work(design, Map.of());
    }

    private Variant work(Resolution design, Map<String, Value> values) {
        try {
            Optional<Diagnostic> trouble = trouble(design);
            if (trouble.isPresent()) {
                return notMade(trouble.get().message());
            }
            return made(design, values);
        } catch (IllegalStateException
                | IllegalArgumentException
                | ArithmeticException
                | IndexOutOfBoundsException ours) {
            // One variant that we cannot build must not take the others with it.
            return notMade(Diagnostic.error("variant-failed", null).build().message());
        }
    }

    private Variant notMade(String reason) {
        List<Optional<Value>> none = new ArrayList<>();
        question.items().forEach(item -> none.add(Optional.empty()));
        return new Variant(false, none, List.of(), reason);
    }

    private Optional<Diagnostic> trouble(Resolution design) {
        Collection<Diagnostic> faults =
                placesHangOnChanges ? Soundness.faults(design, workshop.ring(design)) : design.problemsOfTheRing();
        return faults.stream()
                .filter(fault -> fault.isError() && !known.contains(fault))
                .findFirst();
    }

    private Variant made(Resolution design, Map<String, Value> values) {
        List<Optional<Value>> results = new ArrayList<>();
        String reason = "";
        for (int i = 0; i < question.items().size(); i++) {
            Expression expression = question.items().get(i).expression();
            Result result = once(
                    "item",
                    i,
                    itemsHangOn.get(i),
                    values,
                    () -> value(() -> design.evaluate(expression, question.source())));
            results.add(result.value());
            reason = reason.isEmpty() ? result.reason() : reason;
        }
        List<Integer> failed = new ArrayList<>();
        for (int i = 0; i < requirements.size(); i++) {
            Entry entry = requirements.get(i);
            Expression condition = ((Require) entry.statement()).condition();
            Result result = once(
                    "require",
                    i,
                    requirementsHangOn.get(i),
                    values,
                    () -> value(() -> design.evaluate(condition, entry.source())));
            if (!(result.value().orElse(null) instanceof Value.Truth truth) || !truth.holds()) {
                failed.add(i);
            }
        }
        return new Variant(true, results, failed, reason);
    }

    private Result once(
            String what, int number, Set<String> hangsOn, Map<String, Value> values, Supplier<Result> made) {
        if (hangsOn.size() == changed.size() || values.isEmpty()) {
            return made.get();
        }
        Map<String, Value> own = new LinkedHashMap<>(values);
        own.keySet().retainAll(hangsOn);
        Shared key = new Shared(what, number, own);
        Result result = shared.get(key);
        if (result == null) {
            result = made.get();
            shared.put(key, result);
        }
        return result;
    }

    /** Of what only waits, what it waits for is the reason. */
    private static String reason(Diagnostic first) {
        return first.code().equals("waits") && first.found() != null ? first.found() : first.message();
    }

    private static Result value(Supplier<Value> value) {
        try {
            return new Result(Optional.of(value.get()), "");
        } catch (Fault fault) {
            return new Result(Optional.empty(), reason(fault.diagnostics().get(0)));
        }
    }
}
