// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.bench;

import java.util.List;
import java.util.Set;

import bandwright.dsl.construct.Ring;
import bandwright.dsl.model.DerivedDesign;
import bandwright.dsl.model.Design;
import bandwright.dsl.model.Groove;
import bandwright.dsl.model.Prongs;
import bandwright.dsl.model.Seats;
import bandwright.dsl.model.StoneRow;
import bandwright.dsl.pattern.AsCast;

/**
 * A design before the bench drills its seats and cuts some of its grooves.
 *
 * @param later grooves that are not cut yet, those with them that are cut from what these keep
 */
record Uncut(Design whole, Set<Groove> later) implements DerivedDesign {
    Uncut {
        later = Set.copyOf(later);
    }

    /** What a part weighs that the bench makes or pours, before anything is cut into it, g. */
    static double rawWeightG(Ring finished, String part) {
        Design whole = finished.design();
        Ring raw = finished.of(new Uncut(whole, new GrooveOrder(whole).after(part)));
        return Steps.weight(raw.body(part));
    }

    @Override
    public List<Groove> grooves() {
        return whole.grooves().stream()
                .filter(groove -> !later.contains(groove))
                .toList();
    }

    /** Those that are cast: seats in metal that the bench makes are not, whatever is said of them. */
    @Override
    public List<Seats> seats() {
        List<String> cast = AsCast.of(whole).seats().stream().map(Seats::name).toList();
        return whole.seats().stream()
                .filter(seats -> cast.contains(seats.name()) && has(seats.row()) && parts().containsAll(seats.from()))
                .toList();
    }

    @Override
    public List<StoneRow> stoneRows() {
        return whole.stoneRows().stream()
                .filter(row -> parts().contains(row.part()))
                .toList();
    }

    @Override
    public List<Prongs> prongs() {
        return whole.prongs().stream()
                .filter(prongs -> has(prongs.row()) && parts().contains(prongs.part()))
                .toList();
    }

    private boolean has(String row) {
        return stoneRows().stream().anyMatch(standing -> standing.name().equals(row));
    }

    @Override
    public List<String> parts() {
        return whole.parts().stream()
                .filter(part -> later.stream().noneMatch(groove -> makes(groove, part)))
                .toList();
    }

    private static boolean makes(Groove groove, String part) {
        return groove.keep().filter(keep -> keep.part().equals(part)).isPresent()
                || BenchParts.parted(groove).contains(part);
    }
}
