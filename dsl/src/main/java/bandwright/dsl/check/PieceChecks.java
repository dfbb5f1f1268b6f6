// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.ArrayList;
import java.util.List;

import bandwright.dsl.construct.Body;
import bandwright.dsl.quantity.Quantity;

/** Parts that are more bodies, or fewer, than they are meant to be. */
final class PieceChecks implements Check {
    @Override
    public String key() {
        return "loose-pieces";
    }

    @Override
    public List<Finding> look(Look look) {
        List<Finding> findings = new ArrayList<>();
        for (Body body : look.ring().bodies()) {
            int pieces = body.pieces();
            int meant = look.ring().pieces(body.name());
            Quantity limit = Quantity.number(meant);
            findings.add(Look.without(key(), Severity.FAULT, body.name())
                    .exact()
                    .held(Quantity.number(pieces), limit, limit.toString(), -Math.abs(pieces - meant)));
        }
        return findings;
    }
}
