// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.ring;

import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;

import bandwright.dsl.check.Finding;
import bandwright.dsl.check.Findings;
import bandwright.dsl.check.RingPlace;
import bandwright.dsl.check.Verdict;
import bandwright.dsl.construct.Ring;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.model.Design;
import bandwright.dsl.view.drawing.CheckMark;

/** Checks that failed or are close, where a drawing shows their places. */
final class PlacedChecks {
    private PlacedChecks() {}

    /**
     * @param shown whether a drawing shows a place
     * @param at where
     */
    static List<CheckMark> of(
            Ring ring,
            Findings findings,
            Set<String> parts,
            Predicate<RingPlace> shown,
            Function<RingPlace, Point> at) {
        return findings.all().stream()
                .filter(finding -> finding.verdict() == Verdict.FAILED || finding.verdict() == Verdict.CLOSE)
                .filter(finding -> finding.place() != null && shown.test(finding.place()))
                .filter(finding -> isAboutShown(ring.design(), finding, parts))
                .map(finding -> new CheckMark(
                        finding.failed(),
                        place(finding, at),
                        finding.title() + ", " + finding.at() + ": " + finding.sentence()))
                .toList();
    }

    private static Point place(Finding finding, Function<RingPlace, Point> at) {
        RingPlace place = finding.place();
        if (place == null) {
            throw new IllegalArgumentException("A check without a place");
        }
        return at.apply(place);
    }

    /** What is about parts alone of which none is drawn would point at nothing. */
    private static boolean isAboutShown(Design design, Finding finding, Set<String> parts) {
        return finding.subjects().stream()
                .anyMatch(subject -> parts.contains(subject) || !design.parts().contains(subject));
    }
}
