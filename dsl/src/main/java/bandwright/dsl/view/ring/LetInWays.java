// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.ring;

import java.util.List;
import java.util.Optional;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.construct.Ring;
import bandwright.dsl.model.Groove;
import bandwright.dsl.model.StoneRow;
import bandwright.dsl.view.Turntable;

/**
 * How the parts of a ring are taken off: what was let in goes out the way it came, the collar before it; stones go along their axes, first of all.
 * What was poured in, or kept without a word how it gets there, stays; a kept piece of an arc goes straight out.
 */
final class LetInWays {
    /** How far beyond the band's width a part is drawn out, mm. */
    private static final double FREE_MM = 2;

    private final Ring ring;
    private final double width;
    private final double radius;

    LetInWays(Ring ring, double widthMm, double outerRadiusMm) {
        this.ring = ring;
        this.width = widthMm;
        this.radius = outerRadiusMm;
    }

    Turntable.@Nullable Way of(String part) {
        Way way = way(part, 0);
        return way == null ? null : new Turntable.Way(way.slide(), way.apart(), 0, way.begins, way.ends, way.words);
    }

    /** Stones go where their part goes, after they have left it. */
    Turntable.Way of(StoneRow row) {
        double lift = Math.max(FREE_MM, 1.6 * Math.max(row.aroundMm(), row.widthMm()));
        Way part = way(row.part(), 0);
        return new Turntable.Way(
                part == null ? List.of(0.0, 0.0, 0.0) : part.slide(),
                List.of(0.0, 0.0, 0.0),
                lift,
                part == null ? 0 : part.begins,
                part == null ? 1 : part.ends,
                "each along its own axis, away from the finger");
    }

    private record Way(double x, double y, double z, double ax, double ay, double begins, double ends, String words) {
        List<Double> slide() {
            return List.of(x, y, z);
        }

        List<Double> apart() {
            return List.of(ax, ay, 0.0);
        }

        Way after(@Nullable Way first) {
            return first == null ? this : new Way(x + first.x, y + first.y, z + first.z, ax, ay, begins, ends, words);
        }
    }

    /** @param depth how many grooves were followed to get here; a groove in a groove in a groove is deep enough */
    private @Nullable Way way(String part, int depth) {
        for (Groove groove : ring.design().grooves()) {
            Way own = own(groove, part).orElse(null);
            if (own != null) {
                String from = groove.from().get(0);
                return depth > 8 || from.equals(part) ? own : own.after(way(from, depth + 1));
            }
        }
        return null;
    }

    private Optional<Way> own(Groove groove, String part) {
        boolean kept = groove.keep().stream().anyMatch(keep -> keep.part().equals(part));
        Groove.LetIn letIn = groove.letIn().orElse(null);
        double far = width + FREE_MM;
        if (letIn instanceof Groove.LetInFrom from) {
            double sign = from.fingertip() ? 1 : -1;
            String side = from.fingertip() ? "towards the fingertip" : "towards the hand";
            if (from.collar().equals(part)) {
                return Optional.of(new Way(0, 0, sign * 2 * far, 0, 0, 0.25, 0.8, side + ", first"));
            }
            return kept
                    ? Optional.of(new Way(0, 0, sign * far, 0, 0, 0.5, 1, side + ", after " + from.collar()))
                    : Optional.empty();
        }
        if (!kept) {
            return Optional.empty();
        }
        if (letIn instanceof Groove.LetInHalves halves) {
            double angle = (halves.degrees() + 90) * (StrictMath.PI / 180);
            double apart = 0.7 * radius;
            return Optional.of(new Way(
                    0,
                    0,
                    0,
                    apart * StrictMath.cos(angle),
                    apart * StrictMath.sin(angle),
                    0.3,
                    1,
                    "in two halves, away from each other"));
        }
        if (!groove.around().isFull() && letIn == null) {
            double angle = groove.around().centredDegrees() * (StrictMath.PI / 180);
            double out = (groove.inside() ? -1 : 1) * Math.max(2 * FREE_MM, 0.35 * radius);
            return Optional.of(new Way(
                    out * StrictMath.cos(angle),
                    out * StrictMath.sin(angle),
                    0,
                    0,
                    0,
                    0.3,
                    1,
                    groove.inside() ? "towards the finger" : "away from the finger"));
        }
        return Optional.empty();
    }
}
