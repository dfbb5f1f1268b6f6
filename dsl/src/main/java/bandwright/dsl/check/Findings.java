// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * All that the checks found.
 *
 * @param all failures first, then what is close, cautions, what was not looked at, what passed; within these in the order of the checks
 */
public record Findings(List<Finding> all) {
    public Findings {
        List<Finding> sorted = new ArrayList<>(all);
        sorted.sort(Comparator.comparing(Finding::verdict));
        all = List.copyOf(sorted);
    }

    public List<Finding> with(Verdict verdict) {
        return all.stream().filter(finding -> finding.verdict() == verdict).toList();
    }

    /** One sentence about all, such as {@code 2 of 17 checks failed, 1 close}. */
    public String summary() {
        int failed = with(Verdict.FAILED).size();
        int close = with(Verdict.CLOSE).size();
        int made = all.size() - with(Verdict.NOT_LOOKED_AT).size();
        return failed == 0
                ? CheckTexts.text("summary.none", made, close)
                : CheckTexts.text("summary", failed, made, close);
    }

    /** The failed checks in short, each once with what it is about; nothing if none failed. */
    public Optional<String> failedInShort() {
        Map<String, List<String>> failed = new LinkedHashMap<>();
        with(Verdict.FAILED)
                .forEach(finding -> failed.computeIfAbsent(finding.title(), title -> new ArrayList<>())
                        .add(finding.about() + (finding.measured() == null ? "" : " " + finding.measured())));
        if (failed.isEmpty()) {
            return Optional.empty();
        }
        String names = failed.entrySet().stream()
                .map(entry -> entry.getKey() + " (" + String.join(", ", entry.getValue()) + ")")
                .collect(Collectors.joining("; "));
        return Optional.of(CheckTexts.text("failed-line", with(Verdict.FAILED).size(), names));
    }

    /** The quiet line under a picture; nothing if none failed. */
    public Optional<String> beside() {
        return failedInShort().map(text -> "checks: " + text + "; show checks tells more");
    }
}
