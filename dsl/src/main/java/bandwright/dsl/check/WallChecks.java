// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import bandwright.dsl.construct.Body;
import bandwright.dsl.construct.Ring;
import bandwright.dsl.material.Working;
import bandwright.dsl.model.Design;
import bandwright.dsl.model.Prongs;
import bandwright.dsl.model.Seats;

/**
 * The thinnest wall of each part as it is cast, and of each that the bench makes or cuts, or that is turned, as it is finished. Pins are no walls, and the skins at the bores, which the cones below them
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
        List<Finding> findings = new ArrayList<>();
        Ring pattern = look.pattern();
        List<Body> cast =
                pattern.bodies().stream().filter(body -> !isTurned(body)).toList();
        findings.addAll(walls(look, key(), cast, leftOut(pattern)));
        List<Body> bench = look.ring().bodies().stream()
                .filter(body -> isTurned(body) || isBenchWork(look, body))
                .toList();
        findings.addAll(walls(look, "bench-wall", bench, leftOut(look.ring())));
        return findings;
    }

    /** Of a metal that no caster pours. */
    private static boolean isTurned(Body body) {
        return Working.of(body.section().metal()).isTurned();
    }

    private static List<Finding> walls(Look look, String key, List<Body> bodies, Set<Integer> leftOut) {
        // Each wall is looked for on a core of its own and remembered with its body.
        bodies.parallelStream().filter(body -> isLookedAt(look, body)).forEach(body -> body.wallWithout(leftOut));
        List<Finding> findings = new ArrayList<>();
        for (Body body : bodies) {
            if (!isLookedAt(look, body)) {
                findings.add(Look.open(key, "its many stones take seconds; show checks looks at it", body.name()));
                continue;
            }
            boolean platinum = body.section().metal().family().equals("platinum");
            Limit limit = look.limits().get(platinum ? key + "-platinum" : key);
            double inner = body.section().band().finger().innerRadiusMm();
            findings.add(body.wallWithout(leftOut)
                    .map(wall -> look.on(key, limit, body.name())
                            .at(RingPlace.of(wall, inner))
                            .measured(wall.thicknessMm()))
                    .orElseGet(() -> Look.open(
                            key, "its surfaces meet in sharp edges, where a wall runs out to nothing", body.name())));
        }
        return findings;
    }

    /** Whether a part is made, parted off or cut after casting, so that its finished walls are not those of a casting. */
    private static boolean isBenchWork(Look look, Body body) {
        String part = body.name();
        Design design = look.ring().design();
        return look.pattern().bodies().stream().noneMatch(cast -> cast.name().equals(part))
                || design.grooves().stream()
                        .anyMatch(groove -> groove.atBench() && groove.from().contains(part))
                || design.seats().stream()
                        .anyMatch(seats -> seats.atBench() && seats.from().contains(part));
    }

    private static boolean isLookedAt(Look look, Body body) {
        return look.thorough() || body.trianglesToSearch() <= MOST_AT_ONCE;
    }

    /** Pins, which have checks of their own, and what a setter presses or burnishes over stones: it is meant to be thin. */
    private static Set<Integer> leftOut(Ring ring) {
        Set<String> pins = names(ring.design().prongs().stream().map(Prongs::name));
        Set<String> seats = names(ring.design().seats().stream()
                .filter(cut -> cut.channel().isEmpty())
                .map(Seats::name));
        Set<String> channels = names(ring.design().seats().stream()
                .filter(cut -> cut.channel().isPresent())
                .map(Seats::name));
        return ring.surfaces()
                .numbers(face -> pins.contains(face.definition())
                        || (seats.contains(face.definition()) && !HOLE.contains(face.what()))
                        || (channels.contains(face.definition()) && isOfLip(face.what())));
    }

    /** The notch's faces bound the lip from below. */
    private static boolean isOfLip(String face) {
        return face.startsWith("notch") || face.startsWith("lip");
    }

    private static Set<String> names(Stream<String> names) {
        return names.collect(Collectors.toSet());
    }
}
