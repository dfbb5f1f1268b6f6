// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

import bandwright.dsl.construct.Body;
import bandwright.dsl.construct.Surfaces;
import bandwright.dsl.model.Prongs;
import bandwright.dsl.model.Seats;

/**
 * The thinnest wall of each part as it is cast. Pins are no walls, and the skins at the bores, which the cones below them
 * share, have a check of their own: faces of all these are left out. Exact for the faceted body, so within 0.003 mm.
 */
final class WallChecks implements Check {
    /** More triangles than some fifty stones have that stand without symmetry: about a second. */
    private static final int MOST_AT_ONCE = 150_000;

    private static final Set<String> HOLE = Set.of("hole", "bevel");

    @Override
    public String key() {
        return "casting-wall";
    }

    @Override
    public List<Finding> look(Look look) {
        List<Body> bodies = look.pattern().bodies();
        Set<Integer> leftOut = leftOut(look);
        // Each wall is looked for on a core of its own and remembered with its body.
        bodies.parallelStream().filter(body -> isLookedAt(look, body)).forEach(body -> body.wallWithout(leftOut));
        List<Finding> findings = new ArrayList<>();
        for (Body body : bodies) {
            if (!isLookedAt(look, body)) {
                findings.add(Look.open(key(), "its many stones take seconds; show checks looks at it", body.name()));
                continue;
            }
            boolean platinum = body.section().metal().family().equals("platinum");
            Limit limit = look.limits().get(platinum ? "casting-wall-platinum" : "casting-wall");
            double inner = body.section().band().finger().innerRadiusMm();
            body.wallWithout(leftOut)
                    .ifPresent(wall -> findings.add(look.on(key(), limit, body.name())
                            .at(RingPlace.of(wall, inner))
                            .measured(wall.thicknessMm())));
        }
        return findings;
    }

    private static boolean isLookedAt(Look look, Body body) {
        return look.thorough() || body.trianglesToSearch() <= MOST_AT_ONCE;
    }

    private static Set<Integer> leftOut(Look look) {
        Set<String> pins =
                look.pattern().design().prongs().stream().map(Prongs::name).collect(Collectors.toSet());
        Set<String> seats = look.pattern().design().seats().stream()
                .filter(cut -> cut.channel().isEmpty())
                .map(Seats::name)
                .collect(Collectors.toSet());
        Surfaces surfaces = look.pattern().surfaces();
        return surfaces.numbers(face ->
                pins.contains(face.definition()) || (seats.contains(face.definition()) && !HOLE.contains(face.what())));
    }
}
