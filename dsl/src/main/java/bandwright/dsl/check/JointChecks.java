// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.ArrayList;
import java.util.List;

import bandwright.dsl.model.Groove;

/** What holds a kept part in its place, and the gap that solder wants. */
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
            boolean poured = groove.letIn().orElse(null) instanceof Groove.LetInCast;
            findings.add(Look.without(key(), Severity.ADVICE, keep.part())
                    .holds(poured || groove.joint().isPresent()));
            if (groove.joint().filter(joint -> joint.equals("solder")).isPresent()) {
                findings.add(look.on("solder-gap", look.limits().get("solder-gap-least"), keep.part())
                        .measured(keep.fitMm()));
                findings.add(look.on("solder-gap", look.limits().get("solder-gap-most"), keep.part())
                        .measured(keep.fitMm()));
            }
        }
        return findings;
    }
}
