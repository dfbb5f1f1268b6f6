// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.measure;

import java.util.Optional;
import java.util.TreeSet;

import bandwright.dsl.construct.Body;
import bandwright.dsl.construct.Ring;
import bandwright.dsl.material.Metal;
import bandwright.dsl.model.Groove;
import bandwright.dsl.pattern.JointsClosed;
import bandwright.dsl.quantity.QuantityFormat;

/**
 * The clearances that solder fills. No weight of the model holds it: what a solder weighs its maker knows, so it is reckoned here as if it were as dense
 * as the metals it joins.
 *
 * @param volumeMm3 of all clearances
 * @param leastG their filling, were it as dense as the lightest of the metals
 * @param mostG as the heaviest
 */
public record SolderRoom(double volumeMm3, double leastG, double mostG) {
    /** Less is below a scale's last digit, mm3. */
    private static final double NOTHING_MM3 = 0.05;

    /** Empty where nothing is soldered with a clearance. */
    public static Optional<SolderRoom> of(Ring ring) {
        TreeSet<Double> densities = new TreeSet<>();
        for (Groove groove : ring.design().grooves()) {
            if (JointsClosed.isSoldered(ring.design(), groove)) {
                groove.keep().map(Groove.Keep::metal).map(Metal::densityGPerCm3).ifPresent(densities::add);
                groove.from()
                        .forEach(part -> densities.add(ring.design().metal(part).densityGPerCm3()));
            }
        }
        if (densities.isEmpty()) {
            return Optional.empty();
        }
        double room = volume(ring.of(new JointsClosed(ring.design()))) - volume(ring);
        return room < NOTHING_MM3
                ? Optional.empty()
                : Optional.of(new SolderRoom(room, room * densities.first() / 1000, room * densities.last() / 1000));
    }

    private static double volume(Ring ring) {
        return ring.bodies().stream().mapToDouble(Body::volumeMm3).sum();
    }

    /** About how much solder that is, in words. */
    public String told() {
        String least = QuantityFormat.number(leastG, 2);
        String most = QuantityFormat.number(mostG, 2);
        return QuantityFormat.number(volumeMm3, 1) + " mm^3, about "
                + (least.equals(most) ? most : least + " to " + most) + " g";
    }
}
