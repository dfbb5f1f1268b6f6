// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.explore;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

import bandwright.dsl.check.Findings;
import bandwright.dsl.model.Band;
import bandwright.dsl.model.Fault;
import bandwright.dsl.model.StoneRow;
import bandwright.dsl.resolve.Resolution;

/**
 * One of two designs to be compared.
 *
 * @param name what it is called; another than that of the other
 * @param findings what the checks found in it
 */
public record ContrastSide(String name, Resolution design, Findings findings) {
    /** Parts that stand at the end: of those that a cut has parted, its pieces. None while they cannot be told. */
    List<String> parts() {
        return known(() -> Question.standingParts(design));
    }

    List<Band> bands() {
        return known(design::bands);
    }

    Optional<Band> band(String name) {
        return bands().stream().filter(band -> band.name().equals(name)).findFirst();
    }

    List<StoneRow> rows() {
        return known(design::stoneRows);
    }

    Optional<StoneRow> row(String name) {
        return rows().stream().filter(row -> row.name().equals(name)).findFirst();
    }

    private static <T> List<T> known(Supplier<List<T>> things) {
        try {
            return things.get();
        } catch (Fault fault) {
            return List.of();
        }
    }
}
