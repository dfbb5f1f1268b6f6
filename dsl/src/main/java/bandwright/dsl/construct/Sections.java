// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.Region;
import bandwright.dsl.geometry.plane.RegionBoolean;
import bandwright.dsl.model.Band;
import bandwright.dsl.model.Design;
import bandwright.dsl.model.Groove;

/**
 * The cross-sections of all parts, grooves cut. Grooves that make parts (kept metal, collars, pieces) come first, so that what they
 * make is of the uncut metal; plain grooves then take from each part they name and from what was parted off it. So neither
 * the order of the text nor the names of grooves matter. What no plane section tells (bands that change, grooves on arcs) is left to {@link Carving}.
 */
public final class Sections {
    /** Each is cut from the whole body, which grows with every one: more would take minutes. */
    private static final int MOST_CARVED = 24;

    private final Map<String, PartSection> parts = new LinkedHashMap<>();
    private final Map<String, Band> bands = new LinkedHashMap<>();
    private final List<Groove> keeping = new ArrayList<>();
    private final Map<String, List<String>> partedOff = new LinkedHashMap<>();
    private final Map<String, Stations> stations = new LinkedHashMap<>();
    private final Workshop workshop;

    private Sections(Workshop workshop) {
        this.workshop = workshop;
    }

    /** The collars and pieces that were parted off a part. */
    List<String> offcuts(String part) {
        return partedOff.getOrDefault(part, List.of());
    }

    static Sections of(Design design, Workshop workshop) {
        Sections sections = new Sections(workshop);
        for (Band band : design.bands()) {
            sections.add(band);
        }
        boolean even = design.bands().stream().allMatch(Band::isEven);
        int carved = 0;
        for (Groove groove : inOrder(design.grooves())) {
            carved += even && groove.around().isFull() ? 0 : 1;
            if (carved > MOST_CARVED) {
                throw GrooveFaults.tooMany(groove, MOST_CARVED);
            }
            sections.cut(groove);
        }
        return sections;
    }

    public Collection<PartSection> parts() {
        return parts.values();
    }

    void put(PartSection part) {
        parts.put(part.name(), part);
    }

    void remove(PartSection part) {
        parts.remove(part.name());
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
        bands.put(band.name(), band);
        if (band.isEven()) {
            Region metal = metal(band);
            parts.put(
                    band.name(),
                    PartSection.turned(
                            band.name(),
                            band,
                            band.metal(),
                            metal,
                            List.of(new PartSection.Maker(band.name(), metal))));
        } else {
            Stations changing = Stations.of(band);
            stations.put(band.name(), changing);
            parts.put(
                    band.name(),
                    PartSection.carved(band.name(), band, band.metal(), changing.solid(workshop.surfaces())));
        }
    }

    /** The cross-section of a band at an angle in radians, y from the finger. */
    Outline outline(Band band, double angle) {
        Stations changing = stations.get(band.name());
        return changing == null ? band.stations().get(0).section().outline() : changing.outline(angle);
    }

    GrooveTools tools(Groove groove, Band band) {
        return new GrooveTools(groove, band, angle -> outline(band, angle), workshop.surfaces());
    }

    /** Whether plane sections alone tell what a groove does. */
    private boolean isTurned(Groove groove) {
        return groove.around().isFull()
                && groove.from().stream()
                        .flatMap(name -> piecesOf(name).stream())
                        .map(parts::get)
                        .allMatch(part -> part == null || part.isTurned());
    }

    private void cut(Groove groove) {
        refuseSecondClaim(groove);
        if (!isTurned(groove)) {
            new Carving(groove, this, workshop).cut();
            return;
        }
        Region keptMetal = Region.EMPTY;
        List<PartSection.Maker> makers = new ArrayList<>();
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
                    refuseWithoutWalls(groove, part, part.region().bounds());
                    keptMetal = RegionBoolean.union(keptMetal, RegionBoolean.intersection(part.region(), shape.kept()));
                    makers.addAll(part.makers());
                    makers.add(new PartSection.Maker(groove.name(), shape.kept()));
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
            parts.put(keep.part(), PartSection.turned(keep.part(), band, keep.metal(), keptMetal, makers));
        }
    }

    /** A part, and the collars and pieces that were parted off it; those a groove makes itself are not there yet. */
    List<String> piecesOf(String part) {
        List<String> pieces = new ArrayList<>(List.of(part));
        pieces.addAll(partedOff.getOrDefault(part, List.of()));
        return pieces;
    }

    /** A square groove as wide as its part would only make the part thinner. */
    static void refuseWithoutWalls(Groove groove, PartSection part, Bounds metal) {
        double half = groove.widthMm() / 2;
        boolean walls = groove.acrossMm() - half > metal.minX() || groove.acrossMm() + half < metal.maxX();
        boolean all = groove.depthMm().isEmpty() || groove.keep().isPresent();
        if (!walls && !all) {
            throw GrooveFaults.withoutWalls(groove, part.name(), metal.width());
        }
    }

    void partOff(String from, String piece) {
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
                if (!band.isEven()
                        || !groove.around().isFull()
                        || !other.around().isFull()) {
                    refuseSecondClaim(groove, other, band);
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

    private void refuseSecondClaim(Groove groove, Groove other, Band band) {
        Stations changing = stations.get(band.name());
        Solid whole = changing == null
                ? solid(PartSection.turned(band.name(), band, band.metal(), metal(band), List.of()))
                : changing.solid(workshop.surfaces());
        Solid first = new Solid.Taken(whole, tools(groove, band).tool());
        Solid both = new Solid.Taken(first, tools(other, band).tool());
        if (workshop.carved(both).volumeMm3() > Carved.SPECK_MM3) {
            throw GrooveFaults.keptTwice(groove, other.name());
        }
    }

    Solid solid(PartSection part) {
        return solid(part, workshop.surfaces());
    }

    static Solid solid(PartSection part, Surfaces surfaces) {
        return part.carved()
                .orElseGet(() -> new Solid.Turned(
                        part.region(), List.copyOf(Faces.of(part, surfaces).values())));
    }

    private static Region metal(Band band) {
        Outline outline = band.stations().get(0).section().outline();
        return Region.of(outline.translated(0, band.finger().innerRadiusMm()));
    }

    private void leave(Groove groove, PartSection before, GrooveShape shape) {
        PartSection part = before.madeBy(groove.name(), shape.tool());
        Region rest = RegionBoolean.difference(part.region(), shape.tool());
        if (groove.letIn().orElse(null) instanceof Groove.LetInFrom from) {
            Region side = side(shape, groove, from.fingertip(), 0);
            // The collar slides over its seat as the kept part does over the floor, so it has the same room.
            Region withRoom =
                    side(shape, groove, from.fingertip(), groove.depthMm().isPresent() ? groove.fitMm() : 0);
            Region collar = RegionBoolean.intersection(rest, withRoom);
            if (collar.isEmpty()) {
                throw GrooveFaults.leavesNothing(groove, from.collar());
            }
            add(from.collar(), part.madeBy(groove.name(), withRoom), collar);
            part = part.madeBy(groove.name(), side);
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
            add(groove.leaving().get(i), part, new Region(List.of(ordered.get(i))));
        }
    }

    /** The flank beside a groove, from the level of its floor to where the groove opens, but for some room at that level. */
    private static Region side(GrooveShape shape, Groove groove, boolean fingertip, double room) {
        // Beyond every ring; the language takes no length above a metre.
        double far = 2000;
        double low = groove.inside() ? 0 : shape.floorRadius() + room;
        double high = groove.inside() && groove.depthMm().isPresent() ? shape.floorRadius() - room : far;
        return Region.of(
                fingertip
                        ? Outline.rectangle(shape.rightAcross(), low, far, high)
                        : Outline.rectangle(-far, low, shape.leftAcross(), high));
    }

    private void add(String name, PartSection from, Region region) {
        parts.put(name, PartSection.turned(name, from.band(), from.metal(), region, from.makers()));
    }
}
