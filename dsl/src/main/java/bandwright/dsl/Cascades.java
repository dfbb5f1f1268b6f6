// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.resolve.Resolution;
import bandwright.dsl.source.Place;

/**
 * What hangs on one and the same missing thing is told once where it is missed first, and the rest in one line: a slip is no worse for
 * being at the bottom of all.
 */
final class Cascades {
    private Cascades() {}

    /**
     * The same diagnostics; of those that wait for one reason, the one that says it, and in the place of the first other a single note for
     * all others, where they stand in more than one line.
     */
    static List<Diagnostic> gathered(List<Diagnostic> told) {
        Map<String, Diagnostic> roots = new LinkedHashMap<>();
        for (Diagnostic each : told) {
            if (!isFollower(each)) {
                roots.putIfAbsent(each.message(), each);
            }
        }
        Map<String, List<Diagnostic>> waiting = new LinkedHashMap<>();
        for (Diagnostic each : told) {
            String reason = reason(each, roots);
            if (reason != null) {
                waiting.computeIfAbsent(reason, first -> new ArrayList<>()).add(each);
            }
        }
        List<Diagnostic> gathered = new ArrayList<>();
        for (Diagnostic each : told) {
            String reason = reason(each, roots);
            List<Diagnostic> alike = reason == null ? List.of(each) : waiting.getOrDefault(reason, List.of(each));
            Set<Integer> lines = lines(alike);
            if (lines.size() < 2) {
                gathered.add(each);
            } else if (alike.get(0).equals(each)) {
                gathered.add(Diagnostic.note("many-wait", each.place())
                        .with(
                                Integer.toString(lines.size()),
                                String.join(
                                        ", ",
                                        lines.stream().map(String::valueOf).toList()))
                        .found(reason)
                        .advice(isFollower(each) ? each.advice() : null)
                        .build());
            }
        }
        return gathered;
    }

    private static Set<Integer> lines(List<Diagnostic> alike) {
        Set<Integer> lines = new LinkedHashSet<>();
        alike.forEach(each -> {
            Place place = each.place();
            if (place != null) {
                lines.add(place.line());
            }
        });
        return lines;
    }

    /** Why something waits, where another says so in full; nothing where it says so itself, or does not wait. */
    private static @Nullable String reason(Diagnostic told, Map<String, Diagnostic> roots) {
        if (told.place() == null) {
            return null;
        } else if (isFollower(told)) {
            return told.found();
        }
        return Resolution.isWaiting(told) && !told.equals(roots.get(told.message())) ? told.message() : null;
    }

    private static boolean isFollower(Diagnostic told) {
        return told.code().equals("waits");
    }
}
