// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.ArrayList;
import java.util.List;

import bandwright.dsl.construct.StoneLayout;
import bandwright.dsl.model.Prongs;
import bandwright.dsl.model.Seats;
import bandwright.dsl.model.StoneRow;

/** Rows and what holds them, and pins against the stones that they hold. */
final class PinChecks implements Check {
    @Override
    public String key() {
        return "row-held";
    }

    @Override
    public List<Finding> look(Look look) {
        List<Finding> findings = new ArrayList<>();
        for (StoneRow row : look.ring().design().stoneRows()) {
            StoneLayout layout = look.ring().layout(row.name());
            // Between the stones of a row of one there is no gap for a pin.
            long pins = look.ring().design().prongs().stream()
                    .filter(prongs ->
                            prongs.row().equals(row.name()) && !layout.gaps().isEmpty())
                    .count();
            long channels = look.ring().design().seats().stream()
                    .filter(seats -> seats.row().equals(row.name()))
                    .map(Seats::channel)
                    .filter(channel -> channel.isPresent())
                    .count();
            StoneLayout.Place first = layout.places().get(0);
            findings.add(look.on(key(), row.name())
                    .exact()
                    .at(RingPlace.of(first, StoneChecks.inner(look.ring(), row)))
                    .measured((double) (pins + channels)));
            if (pins > 0 && channels == 0 && !layout.full()) {
                findings.add(Look.without("row-ends", Severity.ADVICE, row.name())
                        .at(RingPlace.of(first, StoneChecks.inner(look.ring(), row)))
                        .holds(false));
            }
        }
        for (Prongs prongs : look.ring().design().prongs()) {
            if (!look.ring().layout(prongs.row()).gaps().isEmpty()) {
                findings.addAll(new PinFindings(look, prongs).all());
            }
        }
        return findings;
    }
}
