// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.bench;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import bandwright.dsl.material.Metal;
import bandwright.dsl.model.Design;
import bandwright.dsl.model.Groove;
import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.quantity.QuantityFormat;

/** How a kept part is fitted, let in and joined. Common practice, no source. */
final class LettingIn {
    static final Set<String> LET_IN = Set.of("let-in", "let-in-room");

    private static final Set<String> JOIN =
            Set.of("joint", "joint-metal", "joint-collar", "joint-halves", "press-fit", "seam-distance", "solder-gap");

    private final Design design;
    private final Groove groove;
    private final Groove.Keep keep;
    private final List<Step> steps = new ArrayList<>();

    private LettingIn(Design design, Groove groove, Groove.Keep keep) {
        this.design = design;
        this.groove = groove;
        this.keep = keep;
    }

    /** @param groove one that keeps a part */
    static List<Step> steps(Design design, Groove groove) {
        LettingIn work = new LettingIn(design, groove, groove.keep().orElseThrow());
        boolean poured = groove.isPoured();
        if (!poured) {
            work.fit();
        }
        work.steps.add(work.letIn().restingOn(LET_IN, List.of(work.keep.part())));
        if (!poured) {
            work.join();
        }
        return work.steps;
    }

    private void fit() {
        String key = metals().stream().allMatch(RawParts::isTurned)
                ? "step.fit.turned"
                : isJoinedBy("press") ? "step.fit.press" : keep.fitMm() > 0 ? "step.fit" : "step.fit.sliding";
        String into = Steps.list(into());
        steps.add(Step.of(
                        key,
                        keep.part(),
                        into,
                        Quantity.millimetres(keep.fitMm()).toString())
                .taking(Step.Takes.NOT_RECKONED));
    }

    private Step letIn() {
        String part = keep.part();
        Groove.LetIn way = groove.letIn().orElse(null);
        if (way instanceof Groove.LetInFrom from) {
            return Step.of("step.let-in.side", part, from.fingertip() ? "fingertip" : "hand", from.collar());
        } else if (way instanceof Groove.LetInHalves halves) {
            return Step.of("step.let-in.halves", part, QuantityFormat.format(Quantity.degrees(halves.degrees())));
        } else if (way instanceof Groove.LetInCast) {
            return Step.of("step.let-in.cast", part, keep.metal().name(), RawParts.melting(keep.metal()));
        } else if (!groove.leaving().isEmpty()) {
            return Step.of("step.let-in.between", part, Steps.list(groove.leaving()));
        } else if (!groove.around().isFull()) {
            return Step.of("step.let-in.arc", part, groove.name());
        }
        return Step.of("step.let-in.none", part, groove.name());
    }

    private void join() {
        Optional<String> joint = groove.joint();
        Step join = joint.map(this::join).orElseGet(() -> Step.of("step.join", keep.part()));
        steps.add(join.restingOn(JOIN, List.of(keep.part())));
        if (joint.filter("solder"::equals).isPresent() && Soldering.wantsPickle(metals())) {
            steps.add(Step.of("step.pickle-joint"));
        }
    }

    private Step join(String joint) {
        if (joint.equals("solder")) {
            Set<Groove> inner = new GrooveOrder(design).after(keep.part());
            Set<Metal> heated = new LinkedHashSet<>(metals());
            inner.forEach(each -> each.keep().map(Groove.Keep::metal).ifPresent(heated::add));
            boolean again = inner.stream()
                    .anyMatch(each -> each.joint().filter("solder"::equals).isPresent());
            return Soldering.step(joined(), into(), metals(), heated, again);
        }
        String collar = groove.collar()
                .filter(name -> joint.equals("press"))
                .map(name -> Sentences.of("step.join.collar", name))
                .orElse("");
        return joint.equals("press")
                ? Step.of("step.join.press", keep.part(), collar)
                : Step.of("step.join.weld", Steps.list(joined()), Steps.list(into()));
    }

    private boolean isJoinedBy(String joint) {
        return groove.joint().filter(joint::equals).isPresent();
    }

    /** A collar that closes the way in has a joint of its own. */
    private List<String> joined() {
        List<String> parts = new ArrayList<>(List.of(keep.part()));
        groove.collar().ifPresent(parts::add);
        return parts;
    }

    /** A groove right through leaves pieces, no part of the old name. */
    private List<String> into() {
        return groove.leaving().isEmpty() ? groove.from() : groove.leaving();
    }

    private Set<Metal> metals() {
        Set<Metal> metals = new LinkedHashSet<>();
        groove.from().forEach(part -> metals.add(design.metal(part)));
        metals.add(keep.metal());
        return metals;
    }
}
