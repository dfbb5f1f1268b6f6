// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import bandwright.dsl.material.Metal;
import bandwright.dsl.material.Working;
import bandwright.dsl.model.Groove;
import bandwright.dsl.quantity.Quantity;

/** What holds a kept part in its place, the room it slides in with, and the gap that solder wants. */
final class JointChecks implements Check {
    @Override
    public String key() {
        return "joint";
    }

    @Override
    public List<Finding> look(Look look) {
        List<Finding> findings = new ArrayList<>();
        for (Groove groove : look.ring().design().grooves()) {
            if (groove.keep().isEmpty()) {
                continue;
            }
            Groove.Keep keep = groove.keep().get();
            boolean poured = groove.isPoured();
            findings.add(Look.without(key(), Severity.ADVICE, keep.part())
                    .holds(poured || groove.joint().isPresent()));
            metals(look, groove, keep, findings);
            if (isJoinedBy(groove, "press")) {
                pressed(groove, keep, findings);
            }
            if (isSlidIn(groove) && !isJoinedBy(groove, "press")) {
                findings.add(look.on("let-in-room", keep.part()).measured(keep.fitMm()));
            }
            if (isJoinedBy(groove, "solder")) {
                findings.add(gap(look, keep));
            }
        }
        return findings;
    }

    private static void pressed(Groove groove, Groove.Keep keep, List<Finding> findings) {
        groove.collar()
                .ifPresent(collar -> findings.add(Look.without("joint-collar", Severity.ADVICE, keep.part())
                        .telling(collar)
                        .holds(false)));
        if (groove.letIn().orElse(null) instanceof Groove.LetInHalves) {
            findings.add(
                    Look.without("joint-halves", Severity.ADVICE, keep.part()).holds(false));
        }
        findings.add(Look.without("press-fit", Severity.RISK, keep.part())
                .telling(Quantity.millimetres(keep.fitMm()).toString())
                .holds(keep.fitMm() == 0));
    }

    /** Solder and welds that a metal does not take: one that is turned takes neither at a goldsmith's torch. */
    private static void metals(Look look, Groove groove, Groove.Keep keep, List<Finding> findings) {
        Set<Metal> metals = new LinkedHashSet<>();
        groove.from().forEach(part -> metals.add(look.ring().design().metal(part)));
        metals.add(keep.metal());
        boolean weld = isJoinedBy(groove, "weld") && metals.size() > 1;
        if (!weld && !isJoinedBy(groove, "solder")) {
            return;
        }
        for (Metal metal : metals) {
            Working working = Working.of(metal);
            if (working.isTurned()) {
                boolean never = working == Working.TURNED_COLD && !weld;
                findings.add(Look.without("joint-metal", never ? Severity.FAULT : Severity.ADVICE, keep.part())
                        .saying(weld ? "joint-metal.weld" : never ? "joint-metal" : "joint-metal.flux")
                        .telling(metal.name())
                        .holds(false));
            }
        }
    }

    /** A closed ring that goes in along the finger; pieces of a cut right through lie against it, halves are laid in, poured metal finds its way, and a press fit is meant to be tight. */
    private static boolean isSlidIn(Groove groove) {
        Groove.LetIn letIn = groove.letIn().orElse(null);
        boolean between = !groove.leaving().isEmpty();
        return groove.around().isFull() && !between && (letIn == null || letIn instanceof Groove.LetInFrom);
    }

    private static boolean isJoinedBy(Groove groove, String joint) {
        return groove.joint().filter(joint::equals).isPresent();
    }

    /** By the limit that is nearer. */
    private static Finding gap(Look look, Groove.Keep keep) {
        Limit least = look.limits().get("solder-gap-least");
        Limit most = look.limits().get("solder-gap-most");
        boolean narrow = least.margin(keep.fitMm()) < most.margin(keep.fitMm());
        return look.on("solder-gap", narrow ? least : most, keep.part()).measured(keep.fitMm());
    }
}
