// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.bench;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

import bandwright.dsl.construct.Body;
import bandwright.dsl.construct.Ring;
import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.material.Metal;
import bandwright.dsl.material.Working;
import bandwright.dsl.model.Band;
import bandwright.dsl.model.Design;
import bandwright.dsl.model.Prongs;
import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.quantity.QuantityFormat;

/**
 * The first steps of the bench's work, until each part lies there as a raw piece: cast, or turned from bar where its metal is neither cast nor bent in a
 * common workshop; or, for a plain band, bent from strip. Common practice, no source.
 */
final class RawParts {
    private static final String CAST_WAY = "A";
    private static final String BENT_WAY = "B";

    private final Design design;
    private final Ring cast;
    private final List<Step> steps = new ArrayList<>();

    private RawParts(Design design, Ring cast) {
        this.design = design;
        this.cast = cast;
    }

    /**
     * @param cast the ring as cast
     * @param walls checks of what is poured
     */
    static List<Step> steps(Design design, Ring cast, BenchParts bench, Set<String> walls) {
        RawParts raw = new RawParts(design, cast);
        List<Body> poured = new ArrayList<>();
        List<Body> turned = new ArrayList<>();
        for (Body body : cast.bodies()) {
            if (bench.isCast(body.name())) {
                (isTurned(body.section().metal()) ? turned : poured).add(body);
            }
        }
        raw.cast(poured, walls);
        raw.turned(turned);
        if (!poured.isEmpty()) {
            raw.steps.add(
                    raw.byTheCaster(Step.of("step.sprues", raw.bores(poured)).taking(Step.Takes.NOT_RECKONED)));
        }
        if (canBeBent(design)) {
            raw.bent();
        }
        for (Step.Basis basis : PatternFaults.of(design, bench)) {
            raw.steps.set(0, raw.steps.get(0).restingOn(basis.checks(), basis.subjects()));
        }
        return raw.steps;
    }

    /** A plain band is as well bent from strip as cast. */
    static boolean canBeBent(Design design) {
        return design.grooves().isEmpty()
                && design.stoneRows().isEmpty()
                && design.bands().stream().allMatch(Band::isEven)
                && design.bands().stream().noneMatch(band -> isTurned(band.metal()));
    }

    static boolean isTurned(Metal metal) {
        return Working.of(metal).isTurned();
    }

    /** When a metal melts, as far as is known. */
    static String melting(Metal metal) {
        Double solidus = metal.solidusC();
        Double liquidus = metal.liquidusC();
        if (solidus == null || liquidus == null) {
            return Sentences.of("step.cast.melting-unknown");
        }
        return Sentences.of(
                "step.cast." + meltingKey(metal),
                QuantityFormat.number(solidus, 0),
                QuantityFormat.number(liquidus, 0));
    }

    /** A pure metal melts at one temperature, an alloy between two. */
    static String meltingKey(Metal metal) {
        return "melting"
                + (Objects.equals(metal.solidusC(), metal.liquidusC()) ? "-at" : "")
                + (metal.meltingFromMemory() ? "-memory" : "");
    }

    private void cast(List<Body> poured, Set<String> walls) {
        if (poured.isEmpty()) {
            return;
        }
        steps.add(byTheCaster(Step.of("step.pattern", Steps.list(names(poured)))));
        byMetal(poured)
                .forEach((metal, bodies) -> steps.add(byTheCaster(Step.of(
                                Working.of(metal) == Working.HOT ? "step.cast-hot" : "step.cast",
                                Steps.list(names(bodies)),
                                metal.name(),
                                Steps.grams(bodies.stream()
                                        .mapToDouble(Steps::weight)
                                        .sum()),
                                melting(metal))
                        .restingOn(walls, names(bodies)))));
    }

    private Step byTheCaster(Step step) {
        return canBeBent(design) ? step.onWay(CAST_WAY) : step;
    }

    private void turned(List<Body> turned) {
        Set<String> pins = BenchParts.pins(cast).stream().map(Prongs::part).collect(Collectors.toSet());
        for (Body body : turned) {
            Bounds bounds = cast.bounds(body.name());
            steps.add(Step.of(
                            body.section().band().isEven() ? "step.turn" : "step.mill",
                            body.name(),
                            body.section().metal().name(),
                            millimetres(2 * bounds.minY()),
                            millimetres(2 * bounds.maxY()),
                            millimetres(bounds.width()))
                    .taking(Step.Takes.NOT_RECKONED));
            if (pins.contains(body.name())) {
                steps.add(Step.of("step.turn-pins", body.name()).taking(Step.Takes.NOT_RECKONED));
            }
        }
    }

    private void bent() {
        Set<Metal> metals = new LinkedHashSet<>();
        design.bands().forEach(band -> metals.add(band.metal()));
        boolean hot = metals.stream().allMatch(metal -> Working.of(metal) == Working.HOT);
        add("step.strip", names(cast.bodies()));
        add("step.bend", List.of());
        for (Metal metal : metals) {
            steps.add(Soldering.closing(metal).onWay(BENT_WAY));
        }
        if (!hot) {
            add("step.pickle", List.of());
        }
        steps.add(Step.of("step.round", bores(cast.bodies())).onWay(BENT_WAY));
    }

    private void add(String key, List<String> names) {
        steps.add(Step.of(key, Steps.list(names)).onWay(BENT_WAY));
    }

    /** The bores of closed rings, each its own; a ring that is let in is wider than the finger. */
    private String bores(Collection<Body> bodies) {
        Map<String, List<String>> bores = new LinkedHashMap<>();
        for (Body body : bodies) {
            if (body.section().isTurned() || !body.section().band().isEven()) {
                bores.computeIfAbsent(millimetres(2 * cast.bounds(body.name()).minY()), bore -> new ArrayList<>())
                        .add(body.name());
            }
        }
        if (bores.size() == 1) {
            return bores.keySet().iterator().next();
        }
        List<String> told = new ArrayList<>();
        bores.forEach((bore, names) -> told.add(Steps.list(names) + " " + bore));
        return Steps.list(told);
    }

    private static String millimetres(double length) {
        return Quantity.millimetres(length).toString();
    }

    private static List<String> names(Collection<Body> bodies) {
        return bodies.stream().map(Body::name).toList();
    }

    private static Map<Metal, List<Body>> byMetal(List<Body> bodies) {
        Map<Metal, List<Body>> byMetal = new LinkedHashMap<>();
        bodies.forEach(body -> byMetal.computeIfAbsent(body.section().metal(), metal -> new ArrayList<>())
                .add(body));
        return byMetal;
    }
}
