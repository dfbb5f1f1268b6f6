// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.ring;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.check.Finding;
import bandwright.dsl.check.Findings;
import bandwright.dsl.check.Limit;
import bandwright.dsl.check.Verdict;
import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.view.Table;

/** What {@code show checks} shows: a row for each finding, failures first; below it what they say, the user's own limits, other rules, sources. */
public final class CheckTable {
    private static final String PRACTICE = "common practice, no source";

    private final List<String> sources = new ArrayList<>();

    private CheckTable() {}

    public static Table of(Findings findings) {
        return new CheckTable().table(findings);
    }

    private Table table(Findings findings) {
        List<List<String>> rows = new ArrayList<>();
        for (Finding finding : findings.all()) {
            rows.add(List.of(
                    finding.title(),
                    finding.at(),
                    text(finding.measured()),
                    finding.limit(),
                    text(finding.margin()),
                    finding.verdict().word(),
                    source(finding)));
        }
        List<String> notes = new ArrayList<>();
        for (Verdict verdict : List.of(Verdict.FAILED, Verdict.CLOSE, Verdict.CAUTION, Verdict.NOT_LOOKED_AT)) {
            findings.with(verdict).forEach(finding -> notes.add(note(finding)));
        }
        notes.addAll(ownLimits(findings));
        notes.addAll(rivals(findings));
        for (int i = 0; i < sources.size(); i++) {
            notes.add("[" + (i + 1) + "] " + sources.get(i));
        }
        return new Table(
                "Checks before metal is poured",
                List.of(
                        Table.Column.words("check"),
                        Table.Column.words("at"),
                        Table.Column.numbers("measured", ""),
                        Table.Column.words("limit"),
                        Table.Column.numbers("margin", ""),
                        Table.Column.words("verdict"),
                        Table.Column.words("source")),
                rows,
                notes);
    }

    private static String text(@Nullable Quantity quantity) {
        return quantity == null ? "" : quantity.toString();
    }

    /** Published sources are long: they get a number, and stand below. */
    private String source(Finding finding) {
        String source = finding.source();
        if (source.isEmpty() || source.equals(PRACTICE) || source.equals(Finding.OWN)) {
            return source;
        }
        if (!sources.contains(source)) {
            sources.add(source);
        }
        return "[" + (sources.indexOf(source) + 1) + "]";
    }

    private static String note(Finding finding) {
        String said = finding.verdict() == Verdict.NOT_LOOKED_AT || finding.verdict() == Verdict.CLOSE
                ? finding.sentence()
                : finding.verdict().word() + ": " + finding.sentence();
        return said + (finding.advice().isEmpty() ? "" : ". " + finding.advice());
    }

    private static Set<String> ownLimits(Findings findings) {
        Set<String> own = new LinkedHashSet<>();
        for (Finding finding : findings.all()) {
            Limit rule = finding.rule();
            if (rule != null && rule.own() != null) {
                own.add("own limit: " + rule.key() + " " + rule.own().value() + ", because \""
                        + rule.own().reason() + "\" (" + rule.own().place() + ")");
            }
        }
        return own;
    }

    /** Rules under which a finding would have come out otherwise. */
    private static Set<String> rivals(Findings findings) {
        Set<String> rivals = new LinkedHashSet<>();
        for (Finding finding : findings.all()) {
            Limit rule = finding.rule();
            Quantity measured = finding.measured();
            if (rule != null && measured != null) {
                for (Limit.Rival rival : rule.otherwise(measured)) {
                    rivals.add("another rule for " + finding.title() + ": " + rule.text(rival.value())
                            + (rival.note().isEmpty() ? "" : ", " + rival.note()) + " (" + rival.source() + ")");
                }
            }
        }
        return rivals;
    }
}
