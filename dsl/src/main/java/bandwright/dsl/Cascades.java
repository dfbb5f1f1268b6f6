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
import bandwright.dsl.source.Place;

/** What waits for one and the same thing is told once, with how much of it there is: a slip is no worse for being at the bottom of all. */
final class Cascades {
    private Cascades() {}

    /** The same diagnostics; of notes that wait for one reason, where they stand in more than one line, a single one in the place of the first. */
    static List<Diagnostic> gathered(List<Diagnostic> told) {
        Map<String, List<Diagnostic>> waiting = new LinkedHashMap<>();
        for (Diagnostic each : told) {
            String reason = reason(each);
            if (reason != null) {
                waiting.computeIfAbsent(reason, first -> new ArrayList<>()).add(each);
            }
        }
        List<Diagnostic> gathered = new ArrayList<>();
        for (Diagnostic each : told) {
            String reason = reason(each);
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
                        .advice(each.advice())
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

    /** Why something waits; nothing where it does not. */
    private static @Nullable String reason(Diagnostic told) {
        return told.code().equals("waits") && told.place() != null ? told.found() : null;
    }
}
