// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.pattern;

import java.util.List;

import bandwright.dsl.material.Metal;
import bandwright.dsl.material.Working;
import bandwright.dsl.model.DerivedDesign;
import bandwright.dsl.model.Design;
import bandwright.dsl.model.Groove;

/** A design whose soldered joints leave no clearance: what it has more than the design is the room that solder fills. */
public record JointsClosed(Design whole) implements DerivedDesign {
    @Override
    public List<Groove> grooves() {
        return whole.grooves().stream().map(this::closed).toList();
    }

    /** Whether a groove leaves room that solder fills. */
    public static boolean isSoldered(Design design, Groove groove) {
        return groove.fitMm() > 0
                && !groove.isPoured()
                && groove.joint().filter("solder"::equals).isPresent()
                && groove.keep().filter(keep -> takesSolder(keep.metal())).isPresent()
                && groove.from().stream().map(design::metal).allMatch(JointsClosed::takesSolder);
    }

    private static boolean takesSolder(Metal metal) {
        return !Working.of(metal).isTurned();
    }

    private Groove closed(Groove groove) {
        return isSoldered(whole, groove)
                ? new Groove(
                        groove.name(),
                        groove.place(),
                        groove.from(),
                        groove.acrossMm(),
                        groove.widthMm(),
                        groove.floor(),
                        groove.depthMm(),
                        groove.around(),
                        groove.roundEnds(),
                        groove.inside(),
                        groove.atBench(),
                        groove.keep().map(keep -> new Groove.Keep(keep.part(), keep.metal(), 0)),
                        groove.letIn(),
                        groove.joint(),
                        groove.leaving())
                : groove;
    }
}
