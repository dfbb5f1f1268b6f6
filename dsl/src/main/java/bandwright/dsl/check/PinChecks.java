// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.ArrayList;
import java.util.List;

import bandwright.dsl.construct.StoneLayout;
import bandwright.dsl.model.Prongs;
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
            RingPlace at = RingPlace.of(layout.places().get(0), StoneChecks.inner(look.ring(), row));
            // Between the stones of a row of one there is no gap for a pin.
            List<Prongs> pins = look.ring().design().prongs().stream()
                    .filter(prongs ->
                            prongs.row().equals(row.name()) && !layout.gaps().isEmpty())
                    .toList();
            long channels = look.ring().design().seats().stream()
                    .filter(seats ->
                            seats.row().equals(row.name()) && seats.channel().isPresent())
                    .count();
            findings.add(held(look, row.name(), at, pins, channels));
            if (!pins.isEmpty() && channels == 0 && !layout.full()) {
                findings.add(Look.without("row-ends", Severity.ADVICE, row.name())
                        .at(at)
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

    /** Pins of which some stand free of their part hold nothing: which stone is left without is not asked. */
    private Finding held(Look look, String row, RingPlace at, List<Prongs> pins, long channels) {
        Look.Builder finding = look.on(key(), row).exact().at(at);
        long holding = channels;
        for (Prongs prongs : pins) {
            int loose = look.ring().loose(prongs);
            if (loose == 0) {
                holding++;
            } else {
                finding.saying("row-held.loose")
                        .advising("row-held.loose")
                        .telling(prongs.name())
                        .telling(String.valueOf(loose))
                        .telling(prongs.part());
            }
        }
        return finding.measured((double) holding);
    }
}
