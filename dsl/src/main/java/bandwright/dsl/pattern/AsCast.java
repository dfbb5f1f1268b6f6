// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.pattern;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import bandwright.dsl.model.DerivedDesign;
import bandwright.dsl.model.Design;
import bandwright.dsl.model.Groove;
import bandwright.dsl.model.Prongs;
import bandwright.dsl.model.Seats;
import bandwright.dsl.model.StoneRow;

/**
 * A design as it comes from the caster: without what is cut at the bench, and without what stands on a part that only the bench makes.
 */
public record AsCast(Design whole, Set<String> cast) implements DerivedDesign {
    public static AsCast of(Design whole) {
        Set<String> cast = new LinkedHashSet<>();
        whole.bands().forEach(band -> cast.add(band.name()));
        // What is kept of a kept part is cast where that is; text may name them in any order.
        List<Groove> waiting = new ArrayList<>(
                whole.grooves().stream().filter(groove -> !groove.atBench()).toList());
        boolean more = true;
        while (more) {
            more = waiting.removeIf(groove -> cast.containsAll(groove.from()) && adds(groove, cast));
        }
        return new AsCast(whole, cast);
    }

    private static boolean adds(Groove groove, Set<String> cast) {
        groove.keep().ifPresent(keep -> cast.add(keep.part()));
        cast.addAll(groove.leaving());
        groove.collar().ifPresent(cast::add);
        return true;
    }

    @Override
    public List<Groove> grooves() {
        return whole.grooves().stream()
                .filter(groove -> !groove.atBench() && cast.containsAll(groove.from()))
                .toList();
    }

    @Override
    public List<StoneRow> stoneRows() {
        return whole.stoneRows().stream()
                .filter(row -> cast.contains(row.part()))
                .toList();
    }

    @Override
    public List<Seats> seats() {
        return whole.seats().stream()
                .filter(seats -> !seats.atBench() && has(seats.row()) && cast.containsAll(seats.from()))
                .toList();
    }

    @Override
    public List<Prongs> prongs() {
        return whole.prongs().stream()
                .filter(prongs -> has(prongs.row()) && cast.contains(prongs.part()))
                .toList();
    }

    private boolean has(String row) {
        return stoneRows().stream().anyMatch(standing -> standing.name().equals(row));
    }

    @Override
    public List<String> parts() {
        return whole.parts().stream().filter(cast::contains).toList();
    }
}
