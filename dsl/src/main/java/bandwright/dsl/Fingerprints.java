// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

import bandwright.dsl.resolve.Kind;
import bandwright.dsl.resolve.Resolution;
import bandwright.dsl.syntax.Explain;
import bandwright.dsl.syntax.Export;
import bandwright.dsl.syntax.Expression;
import bandwright.dsl.syntax.Name;
import bandwright.dsl.syntax.Printer;
import bandwright.dsl.syntax.Quote;
import bandwright.dsl.syntax.Show;
import bandwright.dsl.syntax.ShowSubject;
import bandwright.dsl.syntax.Statement;
import bandwright.dsl.syntax.View;

/** What the questions of a cell hang on, as a text that changes when an answer may have changed. */
final class Fingerprints {
    private final Resolution design;

    Fingerprints(Resolution design) {
        this.design = design;
    }

    /** Nothing if nothing is asked. */
    Optional<String> of(List<Statement> statements) {
        List<String> prints = new ArrayList<>();
        statements.stream().filter(Fingerprints::asks).forEach(statement -> add(statement, prints));
        return prints.isEmpty() ? Optional.empty() : Optional.of(String.join(" ", prints));
    }

    private static boolean asks(Statement statement) {
        return Asking.asks(statement) || statement instanceof Explain || statement instanceof Quote;
    }

    private void add(Statement statement, List<String> prints) {
        Set<String> names = new TreeSet<>(design.namesIn(statement));
        boolean ring = names.remove(Name.RING);
        if (ring || isOfTheWhole(statement) || showsChecks(statement)) {
            for (Kind kind : Kind.values()) {
                if (makesTheRing(kind)) {
                    names.addAll(design.definitions().names(kind));
                }
            }
        }
        if (showsChecks(statement)) {
            prints.add("limits " + design.fingerprintOfLimits());
        }
        if (statement instanceof Show show && show.subject() instanceof ShowSubject.Topic topic) {
            switch (topic.word()) {
                case FINGERPRINT -> prints.add(design.fingerprint());
                case OPTIONS -> names.addAll(design.definitions().names(Kind.OPTION));
                case STONES, CHECKS, DECISIONS, BLANK, STEPS, SIZE -> {}
            }
        }
        prints.add("asked");
        prints.addAll(design.functionsIn(Printer.print(statement)));
        names.forEach(name -> prints.add(name + " " + design.fingerprint(name)));
    }

    /** Pictures have a line about failed checks below them, and checks look at the whole ring. */
    private boolean showsChecks(Statement statement) {
        if (statement instanceof View) {
            return true;
        }
        if (!(statement instanceof Show show)) {
            return false;
        }
        ShowSubject subject = show.subject();
        return subject instanceof ShowSubject.Parts
                || subject instanceof ShowSubject.Section
                || subject instanceof ShowSubject.Views
                || subject instanceof ShowSubject.Layout
                || (subject instanceof ShowSubject.Topic topic && topic.word() == ShowSubject.Topic.Word.CHECKS)
                || (subject instanceof ShowSubject.Value value
                        && value.value() instanceof Expression.Reference reference
                        && (reference.name().isRing()
                                || design.definitions()
                                        .kind(reference.name().text())
                                        .filter(Kind::isPart)
                                        .isPresent()));
    }

    private static boolean isOfTheWhole(Statement statement) {
        if (statement instanceof Show show) {
            ShowSubject subject = show.subject();
            return subject instanceof ShowSubject.Weights
                    || subject instanceof ShowSubject.Casting
                    || (subject instanceof ShowSubject.Section section
                            && section.parts().isEmpty())
                    || (subject instanceof ShowSubject.Views views
                            && views.parts().isEmpty())
                    || (subject instanceof ShowSubject.Topic topic
                            && topic.word() != ShowSubject.Topic.Word.FINGERPRINT);
        }
        return statement instanceof Quote || statement instanceof Export || Exploring.asks(statement);
    }

    private static boolean makesTheRing(Kind kind) {
        return kind.isPart() || kind == Kind.STONE_ROW || kind == Kind.SEATS || kind == Kind.PRONGS;
    }
}
