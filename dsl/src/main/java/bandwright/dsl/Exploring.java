// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import bandwright.dsl.explore.Chapter;
import bandwright.dsl.explore.Compared;
import bandwright.dsl.explore.Explorer;
import bandwright.dsl.explore.Found;
import bandwright.dsl.explore.Varied;
import bandwright.dsl.source.Span;
import bandwright.dsl.syntax.Expression;
import bandwright.dsl.syntax.Find;
import bandwright.dsl.syntax.Measured;
import bandwright.dsl.syntax.Option;
import bandwright.dsl.syntax.Statement;
import bandwright.dsl.syntax.Vary;
import bandwright.dsl.syntax.WhatIf;
import bandwright.dsl.view.Chart;
import bandwright.dsl.view.Table;
import bandwright.dsl.view.ring.RingPictures;

/** Makes answers of what is found out about other designs than the one that stands. */
record Exploring(Explorer explorer, List<Chapter> story) {
    /** Enough beside one another for a page. */
    private static final int MOST_PICTURES = 4;

    /** Whether a statement asks about other designs. */
    static boolean asks(Statement statement) {
        return statement instanceof Vary
                || statement instanceof WhatIf
                || statement instanceof Option
                || statement instanceof Find
                || statement instanceof Measured;
    }

    List<Answer> answer(Statement statement) {
        if (statement instanceof Vary vary) {
            return vary(vary);
        } else if (statement instanceof WhatIf whatIf) {
            return List.of(new Answer.Tabled(explorer.whatIf(whatIf)));
        } else if (statement instanceof Option option) {
            return tabled(explorer.option(option));
        } else if (statement instanceof Find find) {
            Found found = explorer.find(find);
            return List.of(
                    new Answer.Words("", found.asked() + ": " + found.answer()), new Answer.Tabled(found.path()));
        } else if (statement instanceof Measured measured) {
            return List.of(new Answer.Tabled(explorer.measured(measured)));
        }
        return List.of();
    }

    /** All real figures that are kept beside computed ones. */
    List<Answer> measurements() {
        return tabled(explorer.measurements());
    }

    /** What was measured of an expression, in words. */
    Optional<String> measuredOf(Expression expression) {
        return explorer.measuredOf(expression);
    }

    private static List<Answer> tabled(Optional<Table> table) {
        return table.<Answer>map(Answer.Tabled::new).stream().toList();
    }

    /** Each decision so far, with its reason and what it did. */
    List<Answer> decisions(Span asked) {
        return List.of(new Answer.Tabled(decisionTable(asked)));
    }

    Table decisionTable(Span asked) {
        return explorer.decisions(story, asked);
    }

    List<Answer> options(Span asked) {
        Compared compared = explorer.options(asked);
        List<Answer> answers = new ArrayList<>(List.of(new Answer.Tabled(compared.table())));
        if (compared.rings().size() > 1 && compared.rings().size() <= MOST_PICTURES) {
            answers.add(new Answer.Pictured(RingPictures.sideBySide(compared.rings())));
        }
        return answers;
    }

    private List<Answer> vary(Vary vary) {
        Varied varied = explorer.vary(vary);
        Chart chart = varied.chart().orElse(null);
        List<Answer> answers = new ArrayList<>(List.of(new Answer.Varied(varied.table(), varied.shown(), chart)));
        if (chart != null) {
            answers.add(Charts.drawn(chart));
        }
        return answers;
    }
}
