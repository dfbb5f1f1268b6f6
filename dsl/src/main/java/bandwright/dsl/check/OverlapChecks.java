// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.ArrayList;
import java.util.List;

import bandwright.dsl.construct.PartSection;
import bandwright.dsl.construct.Ring;
import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.geometry.plane.RegionBoolean;
import bandwright.dsl.model.Band;

/** Two bands in one place: the area that their sections share. */
final class OverlapChecks implements Check {
    @Override
    public String key() {
        return "bands-overlap";
    }

    @Override
    public List<Finding> look(Look look) {
        List<Band> bands = look.ring().design().bands();
        List<Finding> findings = new ArrayList<>();
        for (int i = 0; i < bands.size(); i++) {
            for (int j = i + 1; j < bands.size(); j++) {
                findings.add(pair(look, bands.get(i), bands.get(j)));
            }
        }
        return findings;
    }

    private Finding pair(Look look, Band first, Band second) {
        double shared = 0;
        boolean known = true;
        RingPlace place = null;
        for (PartSection one : parts(look.ring(), first)) {
            for (PartSection other : parts(look.ring(), second)) {
                Bounds a = look.ring().bounds(one.name());
                Bounds b = look.ring().bounds(other.name());
                boolean apart =
                        a.maxX() <= b.minX() || b.maxX() <= a.minX() || a.maxY() <= b.minY() || b.maxY() <= a.minY();
                if (apart) {
                    continue;
                }
                known &= one.isTurned() && other.isTurned();
                if (one.isTurned() && other.isTurned()) {
                    var common = RegionBoolean.intersection(one.region(), other.region());
                    if (!common.isEmpty()) {
                        shared += common.moments().area();
                        var middle = common.moments().centroid();
                        place = new RingPlace(
                                0, middle.x(), middle.y() - first.finger().innerRadiusMm());
                    }
                }
            }
        }
        if (!known && shared == 0) {
            return Look.open(
                    key(),
                    "their sections change on their way round, and lie in the same place as far as their extents tell",
                    first.name(),
                    second.name());
        }
        return look.on(key(), first.name(), second.name()).at(place).measured(shared);
    }

    private static List<PartSection> parts(Ring ring, Band band) {
        return ring.sections().stream().filter(part -> part.band().equals(band)).toList();
    }
}
