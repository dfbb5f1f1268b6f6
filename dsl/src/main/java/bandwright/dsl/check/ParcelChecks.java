// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

import bandwright.dsl.construct.StoneLayout;
import bandwright.dsl.model.Seats;
import bandwright.dsl.model.StoneRow;

/** The largest stone that the parcel may hold, against its bore or channel and against one as large beside it. */
final class ParcelChecks implements Check {
    @Override
    public String key() {
        return "parcel-bore";
    }

    @Override
    public List<Finding> look(Look look) {
        List<Finding> findings = new ArrayList<>();
        for (StoneRow row : look.ring().design().stoneRows()) {
            if (row.toleranceMm() <= 0) {
                findings.add(Look.open(key(), CheckTexts.text("parcel.unknown"), row.name()));
                continue;
            }
            StoneLayout layout = look.ring().layout(row.name());
            RingPlace at = RingPlace.of(layout.places().get(0), StoneChecks.inner(look.ring(), row));
            for (Seats seats : look.ring().design().seats()) {
                if (seats.row().equals(row.name()) && seats.channel().isEmpty()) {
                    double room = 2 * seats.clearanceMm() - row.toleranceMm();
                    findings.add(look.on(key(), row.name()).at(at).measured(room));
                }
            }
            OptionalDouble gap = layout.gapMm();
            if (gap.isPresent()) {
                findings.add(look.on("parcel-gap", look.limits().get("stone-gap"), row.name())
                        .at(StoneChecks.nearest(layout).place(StoneChecks.inner(look.ring(), row)))
                        .measured(gap.getAsDouble() - row.toleranceMm()));
            }
        }
        return findings;
    }
}
