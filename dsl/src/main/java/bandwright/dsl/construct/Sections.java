// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.Region;
import bandwright.dsl.geometry.plane.RegionBoolean;
import bandwright.dsl.material.Metal;
import bandwright.dsl.model.Band;
import bandwright.dsl.model.Design;
import bandwright.dsl.model.Fault;
import bandwright.dsl.model.Groove;

/**
 * The cross-sections of all parts, grooves cut. Grooves that make parts (kept metal, collars, pieces) come first, so that what they
 * make is of the uncut metal; plain grooves then take from each part they name and from what was parted off it. So neither
 * the order of the text nor the names of grooves matter.
 */
public final class Sections {
    private final Map<String, PartSection> parts = new LinkedHashMap<>();
    private final Map<String, Band> bands = new LinkedHashMap<>();
    private final List<Groove> keeping = new ArrayList<>();
    private final Map<String, List<String>> partedOff = new LinkedHashMap<>();

    private Sections() {}

    /** The collars and pieces that were parted off a part. */
    List<String> offcuts(String part) {
        return partedOff.getOrDefault(part, List.of());
    }

    public static Sections of(Design design) {
        Sections sections = new Sections();
        for (Band band : design.bands()) {
            sections.add(band);
        }
        for (Groove groove : inOrder(design.grooves())) {
            sections.cut(groove);
        }
        return sections;
    }

    public Collection<PartSection> parts() {
        return parts.values();
    }

    public @Nullable PartSection find(String name) {
        return parts.get(name);
    }

    private static boolean makesParts(Groove groove) {
        return groove.keep().isPresent()
                || groove.letIn().isPresent()
                || !groove.leaving().isEmpty();
    }

    /** Those that make parts first; of them, one that cuts what another keeps after that one. */
    private static List<Groove> inOrder(List<Groove> grooves) {
        List<Groove> waiting =
                new ArrayList<>(grooves.stream().filter(Sections::makesParts).toList());
        List<Groove> ordered = new ArrayList<>();
        while (!waiting.isEmpty()) {
            Groove next = waiting.stream()
                    .filter(groove -> waiting.stream()
                            .noneMatch(other -> !other.equals(groove)
                                    && other.keep()
                                            .filter(keep -> groove.from().contains(keep.part()))
                                            .isPresent()))
                    .findFirst()
                    .orElse(waiting.get(0));
            waiting.remove(next);
            ordered.add(next);
        }
        grooves.stream().filter(groove -> !makesParts(groove)).forEach(ordered::add);
        return ordered;
    }

    private void add(Band band) {
        if (!band.isEven()) {
            throw new Fault(Diagnostic.error("not-yet", band.place())
                    .with("a band that changes on its way round")
                    .build());
        }
        bands.put(band.name(), band);
        parts.put(band.name(), new PartSection(band.name(), band, band.metal(), metal(band)));
    }

    private void cut(Groove groove) {
        if (!groove.around().isFull()) {
            throw GrooveFaults.notYet(groove, "a groove that takes only part of the round");
        }
        refuseSecondClaim(groove);
        Region keptMetal = Region.EMPTY;
        Band band = null;
        for (String name : groove.from()) {
            boolean taken = false;
            for (String piece : piecesOf(name)) {
                PartSection part = parts.get(piece);
                if (part == null) {
                    continue;
                }
                band = part.band();
                GrooveShape shape = GrooveShape.of(groove, part.band());
                if (!RegionBoolean.intersection(part.region(), shape.tool()).isEmpty()) {
                    taken = true;
                    refuseWithoutWalls(groove, shape, part);
                    keptMetal = RegionBoolean.union(keptMetal, RegionBoolean.intersection(part.region(), shape.kept()));
                    leave(groove, part, shape);
                }
            }
            if (!taken) {
                throw GrooveFaults.misses(groove, name);
            }
        }
        if (groove.keep().isPresent() && band != null) {
            Groove.Keep keep = groove.keep().get();
            if (keptMetal.isEmpty()) {
                throw GrooveFaults.leavesNothing(groove, keep.part());
            }
            parts.put(keep.part(), new PartSection(keep.part(), band, keep.metal(), keptMetal));
        }
    }

    /** A part, and the collars and pieces that were parted off it; those a groove makes itself are not there yet. */
    private List<String> piecesOf(String part) {
        List<String> pieces = new ArrayList<>(List.of(part));
        pieces.addAll(partedOff.getOrDefault(part, List.of()));
        return pieces;
    }

    /** A square groove as wide as its part would only make the part thinner. */
    private static void refuseWithoutWalls(Groove groove, GrooveShape shape, PartSection part) {
        Bounds metal = part.region().bounds();
        boolean walls = shape.leftAcross() > metal.minX() || shape.rightAcross() < metal.maxX();
        boolean all = groove.depthMm().isEmpty() || groove.keep().isPresent();
        if (!walls && !all) {
            throw GrooveFaults.withoutWalls(groove, part.name(), metal.width());
        }
    }

    private void partOff(String from, String piece) {
        partedOff.computeIfAbsent(from, key -> new ArrayList<>()).add(piece);
    }

    /** Two grooves may cross, but only one can keep the metal where they do. */
    private void refuseSecondClaim(Groove groove) {
        if (groove.keep().isEmpty()) {
            return;
        }
        for (Groove other : keeping) {
            for (String name : groove.from()) {
                Band band = bands.get(name);
                if (band == null || !other.from().contains(name)) {
                    continue;
                }
                Region metal = RegionBoolean.intersection(
                        metal(band), GrooveShape.of(groove, band).tool());
                if (!RegionBoolean.intersection(
                                metal, GrooveShape.of(other, band).tool())
                        .isEmpty()) {
                    throw GrooveFaults.keptTwice(groove, other.name());
                }
            }
        }
        keeping.add(groove);
    }

    private static Region metal(Band band) {
        Outline outline = band.stations().get(0).section().outline();
        return Region.of(outline.translated(0, band.finger().innerRadiusMm()));
    }

    private void leave(Groove groove, PartSection part, GrooveShape shape) {
        Region rest = RegionBoolean.difference(part.region(), shape.tool());
        if (groove.letIn().orElse(null) instanceof Groove.LetInFrom from) {
            // Beyond every ring; the language takes no length above a metre.
            double far = 2000;
            Region side = Region.of(
                    from.fingertip()
                            ? Outline.rectangle(shape.rightAcross(), shape.floorRadius(), far, far)
                            : Outline.rectangle(-far, shape.floorRadius(), shape.leftAcross(), far));
            Region collar = RegionBoolean.intersection(rest, side);
            if (collar.isEmpty()) {
                throw GrooveFaults.leavesNothing(groove, from.collar());
            }
            parts.put(from.collar(), new PartSection(from.collar(), part.band(), part.metal(), collar));
            partOff(part.name(), from.collar());
            rest = RegionBoolean.difference(rest, side);
        }
        if (rest.isEmpty()) {
            throw GrooveFaults.leavesNothing(groove, part.name());
        }
        int pieces = rest.pieces().size();
        if (pieces != Math.max(1, groove.leaving().size())) {
            throw GrooveFaults.partsBody(
                    groove, part.name(), pieces, groove.leaving().size());
        }
        if (groove.leaving().isEmpty()) {
            parts.put(part.name(), part.with(rest));
            return;
        }
        List<Region.Piece> ordered = new ArrayList<>(rest.pieces());
        ordered.sort(
                Comparator.comparingDouble(piece -> piece.moments().centroid().x()));
        parts.remove(part.name());
        for (int i = 0; i < pieces; i++) {
            partOff(part.name(), groove.leaving().get(i));
            add(groove.leaving().get(i), part, new Region(List.of(ordered.get(i))), part.metal());
        }
    }

    private void add(String name, PartSection from, Region region, Metal metal) {
        parts.put(name, new PartSection(name, from.band(), metal, region));
    }
}
