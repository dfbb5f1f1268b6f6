// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.bench;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

import bandwright.dsl.check.Findings;
import bandwright.dsl.check.Verdict;
import bandwright.dsl.construct.Body;
import bandwright.dsl.construct.Ring;
import bandwright.dsl.construct.Workshop;
import bandwright.dsl.material.Metal;
import bandwright.dsl.measure.RowMeasures;
import bandwright.dsl.measure.SolderRoom;
import bandwright.dsl.model.Design;
import bandwright.dsl.model.Groove;
import bandwright.dsl.model.Prongs;
import bandwright.dsl.model.Seats;
import bandwright.dsl.model.StoneRow;
import bandwright.dsl.pattern.AsCast;
import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.quantity.QuantityFormat;
import bandwright.dsl.view.Table;

/**
 * The bench's order of work for a design, with what each step takes away: cast, cut, let in, join, drill, polish what stones
 * will cover, set, polish. The order is common practice, no source; a bench that works otherwise is right too.
 */
public final class Steps {
    /** Checks that each kind of work rests on; what only another pattern mends is told with the pattern. */
    private static final Set<String> CAST = Set.of("casting-wall");

    private static final Set<String> GROOVE = Set.of("bench-wall", "wear-thickness");
    private static final Set<String> SET = Set.of("row-ends");

    private static final double GRAMS_PER_CARAT = 0.2;

    private final Design design;
    private final Ring finished;
    private final Ring cast;
    private final Ring grooved;
    private final BenchParts bench;
    private final Design asCast;
    private final List<Step> steps = new ArrayList<>();

    private Steps(Design design, Workshop workshop) {
        this.design = design;
        this.bench = new BenchParts(design);
        this.asCast = AsCast.of(design);
        this.finished = workshop.ring(design);
        this.cast = workshop.ring(asCast);
        this.grooved = workshop.ring(new Uncut(design, Set.of()));
        steps.addAll(RawParts.steps(design, cast, bench, CAST));
        grooves();
        steps.add(Step.of("step.true").taking(Step.Takes.NOT_RECKONED));
        benchSeats();
        if (!design.stoneRows().isEmpty()) {
            steps.add(Step.of("step.before-setting").taking(Step.Takes.NOT_RECKONED));
        }
        marks();
        design.stoneRows().forEach(this::set);
        String metal = grams(weight(finished));
        boolean stones = !design.stoneRows().isEmpty();
        steps.add(Step.of(stones ? "step.polish" : "step.polish-plain").taking(Step.Takes.NOT_RECKONED));
        steps.add(Step.of(stones ? "step.weigh" : "step.weigh-plain", metal, solder(), carats()));
    }

    /** The steps in order. */
    public static List<Step> of(Design design, Workshop workshop) {
        return List.copyOf(new Steps(design, workshop).steps);
    }

    /**
     * The same as a table, the design's cautions below.
     *
     * @param findings of the checks: a step that rests on a failed one says so
     */
    public static Table table(Design design, Workshop workshop, Findings findings) {
        List<Step> steps = of(design, workshop);
        boolean takes = steps.stream().anyMatch(step -> step.takes() == Step.Takes.RECKONED);
        List<String> numbers = numbers(steps);
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < steps.size(); i++) {
            Step step = steps.get(i);
            StringBuilder told = new StringBuilder(step.instruction());
            findings.with(Verdict.FAILED).stream()
                    .filter(step::restsOn)
                    .forEach(finding -> told.append(Sentences.of("steps.failed", finding.sentence())));
            List<String> row = new ArrayList<>(List.of(numbers.get(i), step.work(), told.toString()));
            if (takes) {
                row.add(taken(steps, i, numbers));
            }
            rows.add(row);
        }
        List<String> notes = new ArrayList<>();
        if (RawParts.canBeBent(design)) {
            notes.add(Sentences.of("steps.ways"));
        }
        notes.add(Sentences.of("steps.note"));
        notes.addAll(Cautions.of(design));
        List<Table.Column> columns = new ArrayList<>(
                List.of(Table.Column.words("step"), Table.Column.words("work"), Table.Column.words("what to do")));
        if (takes) {
            columns.add(Table.Column.numbers("takes away", "g"));
        }
        return new Table("Order of work", columns, rows, notes);
    }

    /** Steps of the two ways to begin count by themselves: A1, A2, B1, and from there on 1, 2. */
    private static List<String> numbers(List<Step> steps) {
        Map<String, Integer> counts = new HashMap<>();
        return steps.stream()
                .map(step -> step.way() + counts.merge(step.way(), 1, Integer::sum))
                .toList();
    }

    /** What a step takes, or with which later one that is told; nothing where it takes nothing. */
    private static String taken(List<Step> steps, int at, List<String> numbers) {
        Step step = steps.get(at);
        return switch (step.takes()) {
            case NOTHING -> "";
            case NOT_RECKONED -> Sentences.of("steps.not-reckoned");
            // A difference of two equal bodies may come out a hair below nothing.
            case RECKONED -> QuantityFormat.number(Math.abs(step.takesG()) < 5e-7 ? 0 : step.takesG(), 3);
            case WITH_LATER -> {
                int later = at + 1;
                while (steps.get(later).takes() != Step.Takes.RECKONED || !sameKind(step, steps.get(later))) {
                    later++;
                }
                yield Sentences.of("steps.with", numbers.get(later));
            }
        };
    }

    private static boolean sameKind(Step one, Step other) {
        return isSeats(one) ? isSeats(other) : one.work().equals(other.work());
    }

    private static boolean isSeats(Step step) {
        return step.bases().stream().anyMatch(basis -> basis.checks().equals(PatternFaults.SEATS));
    }

    private void grooves() {
        GrooveOrder order = new GrooveOrder(design);
        List<Groove> atBench =
                design.grooves().stream().filter(bench::isCutAtBench).toList();
        List<Groove> first = order.at(GrooveOrder.Turn.FIRST, atBench);
        List<Groove> inHand = order.at(GrooveOrder.Turn.IN_HAND, atBench);
        List<Groove> inPlace = order.at(GrooveOrder.Turn.IN_PLACE, atBench);
        benchGrooves(first, inHand.isEmpty() && inPlace.isEmpty());
        List<Groove> inner = order.lettingIn(GrooveOrder.Turn.IN_HAND);
        // Cut from the outer to the inner, for each is cut from what the one before has made, and let in the other way.
        int left = inHand.size();
        for (int i = inner.size() - 1; i >= 0; i--) {
            if (inHand.contains(inner.get(i))) {
                left--;
                benchGrooves(List.of(inner.get(i)), left == 0 && inPlace.isEmpty());
            }
        }
        letIn(inner);
        letIn(order.lettingIn(GrooveOrder.Turn.FIRST));
        benchGrooves(inPlace, true);
        letIn(order.lettingIn(GrooveOrder.Turn.IN_PLACE));
    }

    private void letIn(List<Groove> grooves) {
        grooves.forEach(groove -> steps.addAll(LettingIn.steps(design, groove)));
    }

    /** @param last whether no further groove is made: what all of them take is told once, for they may share metal */
    private void benchGrooves(List<Groove> grooves, boolean last) {
        if (grooves.isEmpty()) {
            return;
        }
        String names = list(grooves.stream().map(Groove::name).toList());
        Step cut = Step.of("step.groove", names);
        List<String> cutFrom = grooves.stream()
                .flatMap(groove -> Stream.concat(groove.from().stream(), Stream.of(groove.name())))
                .toList();
        Step resting = cut.restingOn(GROOVE, cutFrom);
        steps.add(last ? resting.taking(takenByGrooves()) : resting.taking(Step.Takes.WITH_LATER));
        for (Groove groove : grooves) {
            List<String> parted = BenchParts.parted(groove);
            if (!parted.isEmpty()) {
                steps.add(Step.of("step.part", list(parted)));
            }
            if (groove.isPoured()) {
                continue;
            }
            groove.keep().map(Groove.Keep::part).ifPresent(part -> {
                Metal metal = design.metal(part);
                steps.add(Step.of(making(part, metal), part, metal.name(), grams(Uncut.rawWeightG(finished, part)))
                        .restingOn(GROOVE, List.of(part)));
            });
        }
    }

    private String making(String part, Metal metal) {
        boolean pins = BenchParts.pins(finished).stream()
                .anyMatch(prongs -> prongs.part().equals(part));
        return RawParts.isTurned(metal) ? "step.make-turned" : pins ? "step.make-pins" : "step.make";
    }

    /** What came from the caster and what the bench made or poured, less what is left of all. */
    private double takenByGrooves() {
        double made = Stream.concat(bench.ownMetal().stream(), bench.pouredAtBench().stream())
                .mapToDouble(part -> Uncut.rawWeightG(finished, part))
                .sum();
        return weight(cast) + made - weight(grooved);
    }

    private void benchSeats() {
        // Seats in metal that only the bench makes, or parts, are not cast, whatever is said of them.
        List<String> castSeats = asCast.seats().stream().map(Seats::name).toList();
        List<Seats> atBench = design.seats().stream()
                .filter(seats -> !castSeats.contains(seats.name()))
                .toList();
        for (Seats seats : design.seats()) {
            if (castSeats.contains(seats.name())) {
                boolean turned = seats.from().stream().map(design::metal).anyMatch(RawParts::isTurned);
                steps.add(Step.of(
                                turned
                                        ? "step.seats.turned"
                                        : seats.channel().isPresent() ? "step.seats.slot" : "step.seats.cast",
                                seats.row())
                        .taking(Step.Takes.NOT_RECKONED));
            }
        }
        for (int i = 0; i < atBench.size(); i++) {
            Seats seats = atBench.get(i);
            boolean turned = seats.from().stream().map(design::metal).anyMatch(RawParts::isTurned);
            Step step = Step.of(
                            turned ? "step.seats.turned" : seats.channel().isPresent() ? "step.channel" : "step.seats",
                            seats.row(),
                            Quantity.millimetres(seats.channel()
                                            .map(Seats.Channel::widthMm)
                                            .orElse(seats.holeMm()))
                                    .toString(),
                            deepest(seats.row()))
                    .restingOn(PatternFaults.SEATS, List.of(seats.row(), seats.name()));
            boolean last = i == atBench.size() - 1;
            // Told once for all of them: seats of two rows may share metal.
            steps.add(last ? step.taking(weight(grooved) - weight(finished)) : step.taking(Step.Takes.WITH_LATER));
        }
    }

    private String deepest(String row) {
        StoneRow stones = finished.layout(row).row();
        return stones.depthIsGuessed()
                ? Sentences.of("step.seats.deepest", stones.material().name())
                : "";
    }

    private void marks() {
        boolean precious = design.parts().stream().map(design::metal).anyMatch(Metal::holdsPrecious);
        String key = !precious ? "step.mark-base" : design.stoneRows().isEmpty() ? "step.mark-plain" : "step.mark";
        steps.add(Step.of(key));
    }

    private void set(StoneRow row) {
        String stones = finished.layout(row.name()).count() + " " + row.cut().word() + " "
                + row.material().name();
        List<Prongs> pins = BenchParts.pins(finished).stream()
                .filter(prongs -> prongs.row().equals(row.name()))
                .toList();
        boolean channel = design.seats().stream()
                .anyMatch(seats ->
                        seats.row().equals(row.name()) && seats.channel().isPresent());
        Step set;
        if (!pins.isEmpty()) {
            boolean ends = !finished.layout(row.name()).full();
            set = Step.of(
                    "step.set.pins",
                    row.name(),
                    stones,
                    height(pins.get(0), row),
                    ends ? Sentences.of("step.set.ends") : "");
        } else if (channel) {
            set = Step.of("step.set.channel", row.name(), stones);
        } else {
            set = Step.of(row.cut().isRounded() ? "step.set.open" : "step.set.open-corners", row.name(), stones);
        }
        List<String> about = new ArrayList<>(List.of(row.name()));
        pins.forEach(each -> about.add(each.name()));
        steps.add(set.restingOn(SET, about).taking(Step.Takes.NOT_RECKONED));
    }

    /** What the joints hold besides, for no weight of the model has it. */
    private String solder() {
        return SolderRoom.of(finished)
                .map(room -> Sentences.of("step.weigh.solder", room.told()))
                .orElse("");
    }

    private String carats() {
        double carats = design.stoneRows().stream()
                .mapToDouble(row -> new RowMeasures(finished, row.name()).caratsTotal())
                .sum();
        return Sentences.of(
                "step.weigh.carats",
                QuantityFormat.number(carats, 3),
                QuantityFormat.number(carats * GRAMS_PER_CARAT, 3));
    }

    /** Pins count from the girdle line, its lower edge, and a setter sees the upper one. */
    private static String height(Prongs pins, StoneRow row) {
        double girdle = row.girdleShare() * row.size().widthMm();
        return pins.setHeightMm().isPresent()
                ? Sentences.of(
                        "step.set.height",
                        Quantity.millimetres(pins.setHeightMm().getAsDouble()).toString(),
                        Quantity.millimetres(pins.setHeightMm().getAsDouble() - girdle)
                                .toString())
                : Sentences.of("step.set.no-height");
    }

    private static double weight(Ring ring) {
        return ring.bodies().stream().mapToDouble(Steps::weight).sum();
    }

    static double weight(Body body) {
        return body.volumeMm3() * body.section().metal().densityGPerCm3() / 1000;
    }

    static String grams(double grams) {
        return Quantity.grams(grams).toString();
    }

    static String list(List<String> names) {
        return names.size() < 2
                ? String.join("", names)
                : String.join(", ", names.subList(0, names.size() - 1)) + " and " + names.get(names.size() - 1);
    }
}
