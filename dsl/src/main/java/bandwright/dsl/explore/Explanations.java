// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.explore;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;

import bandwright.dsl.construct.Workshop;
import bandwright.dsl.material.Casting;
import bandwright.dsl.material.Metal;
import bandwright.dsl.material.MetalCatalogue;
import bandwright.dsl.measure.SolderRoom;
import bandwright.dsl.model.Fault;
import bandwright.dsl.quantity.FingerSize;
import bandwright.dsl.quantity.QuantityFormat;
import bandwright.dsl.resolve.Resolution;
import bandwright.dsl.resolve.expression.Value;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.syntax.Argument;
import bandwright.dsl.syntax.Expression;
import bandwright.dsl.syntax.Name;

/** What would explain that a weighed piece is heavier or lighter than computed: suggestions, none of them a finding. */
record Explanations(
        Resolution design, Workshop workshop, SourceText source, Expression measure, Value computed, Value real) {
    private static final int MOST = 2;

    /** Weights closer than this share agree; no source, a scale's last digit on a ring. */
    private static final double SAME = 0.002;

    /** Linear shrinkage beyond this is no casting allowance; common practice, no source. */
    private static final double LARGEST_SHRINKAGE = 0.025;

    /** More steps of a finger size than this would have been noticed. */
    private static final double MOST_STEPS = 2;

    /** Solder fills a gap in part, or runs over: between these shares it explains a difference; common practice, no source. */
    private static final double LEAST_FILLED = 0.4;

    private static final double MOST_FILLED = 1.8;

    /** One or two sentences; none for what is no weight of a part, or agrees. */
    List<String> sentences() {
        if (!(measure instanceof Expression.Call call)
                || !call.function().text().equals("weight")
                || call.arguments().isEmpty()
                || Math.abs(off()) <= SAME * grams(computed)) {
            return List.of();
        }
        List<Supplier<Optional<String>>> ways =
                List.of(() -> solder(call), () -> pattern(call), this::fingerSize, () -> alloy(call), this::shrinkage);
        List<String> sentences =
                ways.stream().flatMap(way -> way.get().stream()).limit(MOST).toList();
        return sentences.isEmpty()
                ? List.of(
                        "nothing on file explains a difference of this size; check the stage of work, the alloy and the scale.")
                : sentences;
    }

    private double off() {
        return grams(real) - grams(computed);
    }

    private static double grams(Value weight) {
        return weight instanceof Value.Amount amount ? amount.quantity().value() : Double.NaN;
    }

    /** Whether what the joints hold is about as heavy; a part by itself was weighed before it was joined. */
    private Optional<String> solder(Expression.Call call) {
        boolean whole = call.arguments().size() == 1
                && call.arguments().get(0).value() instanceof Expression.Reference part
                && part.name().isRing();
        if (!whole) {
            return Optional.empty();
        }
        return SolderRoom.of(workshop.ring(design))
                .filter(room -> off() >= room.leastG() * LEAST_FILLED && off() <= room.mostG() * MOST_FILLED)
                .map(room -> "computed without solder: the gaps hold " + room.told() + ", and a fillet adds to it.");
    }

    /** Whether the piece as cast, before the bench takes metal away, fits better. */
    private Optional<String> pattern(Expression.Call call) {
        if (call.arguments().size() > 1) {
            return Optional.empty();
        }
        List<Argument> arguments = new ArrayList<>(call.arguments());
        Name pattern = new Name("pattern", call.span());
        arguments.add(new Argument(null, new Expression.Reference(pattern, call.span()), call.span()));
        Optional<Value> cast = value(design, new Expression.Call(call.function(), arguments, call.span()));
        return cast.filter(weight -> Math.abs(grams(real) - grams(weight)) < Math.abs(off()) / 2)
                .map(weight -> "as cast, before what is cut at the bench, it would weigh " + weight.text()
                        + "; it may have been weighed then.");
    }

    private Optional<String> fingerSize() {
        for (String name : design.dependencies(measure)) {
            Optional<Value.Size> size = size(name);
            if (size.isPresent()) {
                FingerSize now = size.get().size();
                double step = now.system().standardStep();
                double turned = off() > 0 ? step : -step;
                Value other = new Value.Size(now.plus(turned));
                Optional<Value> weight = value(design.withValues(Map.of(name, other)), measure);
                double change =
                        weight.map(known -> grams(known) - grams(computed)).orElse(0.0);
                double steps = off() / change;
                if (Double.isFinite(steps) && steps > 0 && steps <= MOST_STEPS) {
                    return Optional.of("with " + other.text() + " instead of " + now.text() + " for " + name
                            + " it would weigh " + weight.orElseThrow().text() + "; measure the bore.");
                }
            }
        }
        return Optional.empty();
    }

    private Optional<Value.Size> size(String name) {
        try {
            return design.valueOf(name) instanceof Value.Size size ? Optional.of(size) : Optional.empty();
        } catch (Fault fault) {
            return Optional.empty();
        }
    }

    /** Whether the densities of other recipes of the same colour and fineness reach as far. */
    private Optional<String> alloy(Expression.Call call) {
        if (!(call.arguments().get(0).value() instanceof Expression.Reference part)) {
            return Optional.empty();
        }
        List<Metal> metals = metals(part.name());
        if (metals.size() != 1) {
            return Optional.empty();
        }
        Metal metal = metals.get(0);
        double needed = metal.densityGPerCm3() * grams(real) / grams(computed);
        List<Metal> like = like(metal);
        Optional<Metal> nearest =
                like.stream().min(Comparator.comparing((Metal other) -> Math.abs(other.densityGPerCm3() - needed)));
        double least = like.stream().mapToDouble(Metal::densityGPerCm3).min().orElse(Double.NaN);
        double most = like.stream().mapToDouble(Metal::densityGPerCm3).max().orElse(Double.NaN);
        if (nearest.isEmpty() || !(needed >= least && needed <= most)) {
            return Optional.empty();
        }
        return Optional.of("a density of " + density(needed) + " instead of " + density(metal.densityGPerCm3())
                + " would explain it; alloys of this colour and fineness on file lie between " + density(least)
                + " and "
                + density(most) + ", the nearest being " + nearest.get().name() + ".");
    }

    private List<Metal> metals(Name part) {
        try {
            Stream<String> parts = part.isRing() ? design.parts().stream() : Stream.of(part.text());
            return parts.map(design::metal).distinct().toList();
        } catch (Fault fault) {
            return List.of();
        }
    }

    private static List<Metal> like(Metal metal) {
        Integer fineness = metal.fineness();
        return fineness == null
                ? List.of()
                : MetalCatalogue.recipes(fineness.toString()).stream()
                        .filter(other -> other.family().equals(metal.family())
                                && other.colour().equals(metal.colour()))
                        .toList();
    }

    private static String density(double value) {
        return QuantityFormat.number(value, 2) + " g/cm^3";
    }

    /** The linear shrinkage that loses as much: the mass goes with the cube of the length, see {@link Casting}. */
    private Optional<String> shrinkage() {
        double lost = -off() / grams(computed);
        double shrinkage = 1 - StrictMath.cbrt(1 - lost);
        if (!(shrinkage > 0 && shrinkage <= LARGEST_SHRINKAGE)) {
            return Optional.empty();
        }
        return Optional.of("a shrinkage of " + QuantityFormat.number(100 * shrinkage, 1)
                + " % along every length, which the pattern did not allow for, loses "
                + QuantityFormat.number(100 * Casting.massLostByShrinking(shrinkage), 1) + " % of the metal.");
    }

    private Optional<Value> value(Resolution of, Expression expression) {
        try {
            return Optional.of(of.evaluate(expression, source));
        } catch (Fault fault) {
            return Optional.empty();
        }
    }
}
