// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import bandwright.dsl.check.Findings;
import bandwright.dsl.check.Verdict;
import bandwright.dsl.construct.Body;
import bandwright.dsl.construct.Ring;
import bandwright.dsl.construct.Workshop;
import bandwright.dsl.material.Metal;
import bandwright.dsl.material.StoneCut;
import bandwright.dsl.model.Band;
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
    /** Checks that each kind of work rests on: what only another pattern mends is told with the pattern. */
    private static final Set<String> PATTERN = Set.of(
            "printable-detail",
            "loose-pieces",
            "bands-overlap",
            "bore-skin",
            "stone-gap",
            "pavilion-gap",
            "rows-apart",
            "girdle-edge",
            "culet-to-finger",
            "behind-row",
            "row-held",
            "pin-diameter",
            "pin-contact",
            "pin-reach",
            "pin-notch",
            "pin-clearance",
            "pins-apart",
            "tip-height",
            "tip-reached");

    private static final Set<String> CAST = Set.of("casting-wall");
    private static final Set<String> GROOVE = Set.of("bench-wall", "wear-thickness");
    private static final Set<String> LET_IN = Set.of("let-in", "let-in-room");
    private static final Set<String> JOIN = Set.of("joint", "seam-distance", "solder-gap");
    private static final Set<String> SEATS = Set.of(
            "seat-depth",
            "seat-width",
            "seat-ledge",
            "bore-web",
            "bore-side",
            "channel-width",
            "channel-notch",
            "channel-wall");
    private static final Set<String> SET = Set.of("parcel-bore", "parcel-gap");

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
        this.grooved = workshop.ring(new WithoutBenchSeats(design));
        patterns();
        cast();
        List<Groove> atBench = design.grooves().stream().filter(Groove::atBench).toList();
        benchGrooves(
                atBench.stream().filter(groove -> !isLater(groove)).toList(),
                atBench.stream().noneMatch(this::isLater));
        design.grooves().forEach(this::letIn);
        benchGrooves(atBench.stream().filter(this::isLater).toList(), true);
        steps.add(Step.of("step.true").taking(Step.Takes.NOT_RECKONED));
        benchSeats();
        if (!design.stoneRows().isEmpty()) {
            steps.add(Step.of("step.before-setting").taking(Step.Takes.NOT_RECKONED));
        }
        marks();
        design.stoneRows().forEach(this::set);
        String metal = grams(weight(finished, Set.of()));
        boolean stones = !design.stoneRows().isEmpty();
        steps.add(Step.of(stones ? "step.polish" : "step.polish-plain").taking(Step.Takes.NOT_RECKONED));
        steps.add(Step.of(stones ? "step.weigh" : "step.weigh-plain", metal));
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
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < steps.size(); i++) {
            Step step = steps.get(i);
            StringBuilder told = new StringBuilder(step.instruction());
            findings.with(Verdict.FAILED).stream()
                    .filter(step::restsOn)
                    .forEach(finding -> told.append(Sentences.of("steps.failed", finding.sentence())));
            List<String> row = new ArrayList<>(List.of(Integer.toString(i + 1), step.work(), told.toString()));
            if (takes) {
                row.add(taken(steps, i));
            }
            rows.add(row);
        }
        List<String> notes = new ArrayList<>(List.of(Sentences.of("steps.note")));
        notes.addAll(Cautions.of(design));
        List<Table.Column> columns = new ArrayList<>(List.of(
                Table.Column.numbers("step", ""), Table.Column.words("work"), Table.Column.words("what to do")));
        if (takes) {
            columns.add(Table.Column.numbers("takes away", "g"));
        }
        return new Table("Order of work", columns, rows, notes);
    }

    /** What a step takes, or with which later one that is told; nothing where it takes nothing. */
    private static String taken(List<Step> steps, int at) {
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
                yield Sentences.of("steps.with", Integer.toString(later + 1));
            }
        };
    }

    private static boolean sameKind(Step one, Step other) {
        return one.checks().equals(SEATS)
                ? other.checks().equals(SEATS)
                : one.work().equals(other.work());
    }

    private void patterns() {
        List<String> parts =
                cast.bodies().stream().map(Body::name).filter(bench::isCast).toList();
        steps.add(Step.of("step.pattern", list(parts)).restingOn(PATTERN, List.of()));
        if (canBeBent(design)) {
            steps.add(Step.of("step.bend"));
        }
    }

    /** A plain band is as well bent from strip as cast. */
    static boolean canBeBent(Design design) {
        return design.grooves().isEmpty()
                && design.stoneRows().isEmpty()
                && design.bands().stream().allMatch(Band::isEven);
    }

    private void cast() {
        Set<String> poured = poured();
        Map<Metal, List<Body>> byMetal = new LinkedHashMap<>();
        for (Body body : cast.bodies()) {
            if (!poured.contains(body.name())) {
                byMetal.computeIfAbsent(body.section().metal(), metal -> new ArrayList<>())
                        .add(body);
            }
        }
        byMetal.forEach((metal, bodies) -> steps.add(Step.of(
                        "step.cast",
                        list(bodies.stream().map(Body::name).toList()),
                        metal.name(),
                        grams(bodies.stream().mapToDouble(Steps::weight).sum()),
                        melting(metal))
                .restingOn(CAST, bodies.stream().map(Body::name).toList())));
        steps.add(Step.of("step.sprues", bores()).taking(Step.Takes.NOT_RECKONED));
    }

    private Set<String> poured() {
        return design.grooves().stream()
                .filter(groove -> groove.letIn()
                        .filter(Groove.LetInCast.class::isInstance)
                        .isPresent())
                .flatMap(groove -> groove.keep().stream())
                .map(Groove.Keep::part)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static String melting(Metal metal) {
        Double solidus = metal.solidusC();
        Double liquidus = metal.liquidusC();
        if (solidus == null || liquidus == null) {
            return Sentences.of("step.cast.melting-unknown");
        }
        String key = metal.meltingFromMemory() ? "step.cast.melting-memory" : "step.cast.melting";
        return Sentences.of(key, QuantityFormat.number(solidus, 0), QuantityFormat.number(liquidus, 0));
    }

    private String bores() {
        return design.bands().stream()
                .map(band ->
                        Quantity.millimetres(2 * band.finger().innerRadiusMm()).toString())
                .distinct()
                .collect(Collectors.joining(" and "));
    }

    /** Whether a groove is cut from metal that must be in its place first: kept metal of another groove. */
    private boolean isLater(Groove groove) {
        return design.grooves().stream()
                .filter(other -> !other.equals(groove))
                .flatMap(other -> other.keep().stream())
                .anyMatch(keep -> groove.from().contains(keep.part()));
    }

    /** @param last whether no further groove is made: what all of them take is told once, for they may share metal */
    private void benchGrooves(List<Groove> grooves, boolean last) {
        if (grooves.isEmpty()) {
            return;
        }
        // Metal that a groove keeps in another metal is a piece of its own, not what is left of the cut one.
        Set<String> kept = bench.ownMetal();
        String names = list(grooves.stream().map(Groove::name).toList());
        Step cut = Step.of("step.groove", names);
        List<String> cutFrom = grooves.stream()
                .flatMap(groove -> Stream.concat(groove.from().stream(), Stream.of(groove.name())))
                .toList();
        Step resting = cut.restingOn(GROOVE, cutFrom);
        steps.add(
                last
                        ? resting.taking(weight(cast, Set.of()) - weight(grooved, kept))
                        : resting.taking(Step.Takes.WITH_LATER));
        for (Groove groove : grooves) {
            List<String> parted = BenchParts.parted(groove);
            if (!parted.isEmpty()) {
                steps.add(Step.of("step.part", list(parted)));
            }
            groove.keep().map(Groove.Keep::part).ifPresent(part -> {
                Body body = grooved.body(part);
                steps.add(Step.of("step.make", part, body.section().metal().name(), grams(weight(body)))
                        .restingOn(GROOVE, List.of(part)));
            });
        }
    }

    private void letIn(Groove groove) {
        if (groove.keep().isEmpty()) {
            return;
        }
        Groove.Keep keep = groove.keep().get();
        String part = keep.part();
        Groove.LetIn way = groove.letIn().orElse(null);
        Step letIn;
        if (way instanceof Groove.LetInFrom from) {
            letIn = Step.of("step.let-in.side", part, from.fingertip() ? "fingertip" : "hand", from.collar());
        } else if (way instanceof Groove.LetInHalves halves) {
            letIn = Step.of("step.let-in.halves", part, QuantityFormat.format(Quantity.degrees(halves.degrees())));
        } else if (way instanceof Groove.LetInCast) {
            letIn = Step.of("step.let-in.cast", part, keep.metal().name(), melting(keep.metal()));
        } else {
            letIn = Step.of("step.let-in.none", part, groove.name());
        }
        steps.add(letIn.restingOn(LET_IN, List.of(part)));
        if (way instanceof Groove.LetInCast) {
            return;
        }
        Step join = groove.joint()
                .map(joint -> joint.equals("solder")
                        ? Soldering.step(design, groove, keep)
                        : Step.of("step.join." + joint, part))
                .orElseGet(() -> Step.of("step.join", part));
        steps.add(join.restingOn(JOIN, List.of(part)));
    }

    private void benchSeats() {
        // Seats in metal that only the bench makes, or parts, are not cast, whatever is said of them.
        List<String> castSeats = asCast.seats().stream().map(Seats::name).toList();
        List<Seats> atBench = design.seats().stream()
                .filter(seats -> !castSeats.contains(seats.name()))
                .toList();
        for (Seats seats : design.seats()) {
            if (castSeats.contains(seats.name())) {
                steps.add(Step.of("step.seats.cast", seats.row())
                        .restingOn(SEATS, List.of(seats.row(), seats.name()))
                        .taking(Step.Takes.NOT_RECKONED));
            }
        }
        for (int i = 0; i < atBench.size(); i++) {
            Seats seats = atBench.get(i);
            Step step = Step.of(
                            seats.channel().isPresent() ? "step.channel" : "step.seats",
                            seats.row(),
                            Quantity.millimetres(seats.channel()
                                            .map(Seats.Channel::widthMm)
                                            .orElse(seats.holeMm()))
                                    .toString())
                    .restingOn(SEATS, List.of(seats.row(), seats.name()));
            boolean last = i == atBench.size() - 1;
            // Told once for all of them: seats of two rows may share metal.
            steps.add(
                    last
                            ? step.taking(weight(grooved, Set.of()) - weight(finished, Set.of()))
                            : step.taking(Step.Takes.WITH_LATER));
        }
    }

    private void marks() {
        steps.add(Step.of(design.stoneRows().isEmpty() ? "step.mark-plain" : "step.mark"));
    }

    private void set(StoneRow row) {
        String stones = finished.layout(row.name()).count() + " " + row.cut().word() + " "
                + row.material().name();
        List<Prongs> pins = design.prongs().stream()
                .filter(prongs -> prongs.row().equals(row.name()))
                .toList();
        boolean channel = design.seats().stream()
                .anyMatch(seats ->
                        seats.row().equals(row.name()) && seats.channel().isPresent());
        Step set;
        if (!pins.isEmpty()) {
            set = Step.of("step.set.pins", row.name(), stones, height(pins.get(0)));
        } else if (channel) {
            set = Step.of("step.set.channel", row.name(), stones);
        } else {
            set = Step.of(row.cut() == StoneCut.ROUND ? "step.set.open" : "step.set.open-corners", row.name(), stones);
        }
        List<String> about = new ArrayList<>(List.of(row.name()));
        pins.forEach(each -> about.add(each.name()));
        steps.add(set.restingOn(SET, about).taking(Step.Takes.NOT_RECKONED));
    }

    private static String height(Prongs pins) {
        return pins.setHeightMm().isPresent()
                ? Sentences.of(
                        "step.set.height",
                        Quantity.millimetres(pins.setHeightMm().getAsDouble()).toString())
                : Sentences.of("step.set.no-height");
    }

    private static double weight(Ring ring, Set<String> without) {
        return ring.bodies().stream()
                .filter(body -> !without.contains(body.name()))
                .mapToDouble(Steps::weight)
                .sum();
    }

    private static double weight(Body body) {
        return body.volumeMm3() * body.section().metal().densityGPerCm3() / 1000;
    }

    private static String grams(double grams) {
        return Quantity.grams(grams).toString();
    }

    static String list(List<String> names) {
        return names.size() < 2
                ? String.join("", names)
                : String.join(", ", names.subList(0, names.size() - 1)) + " and " + names.get(names.size() - 1);
    }
}
