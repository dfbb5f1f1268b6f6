// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.export;

import bandwright.dsl.Report;
import bandwright.dsl.diagnostic.HtmlRenderer;
import bandwright.dsl.view.Table;
import bandwright.kernel.display.Decimals;
import bandwright.kernel.display.Headlines;

/** The headline numbers at the page's end. */
final class NumbersHtml {
    private NumbersHtml() {}

    /** The section, or nothing where there is no ring. */
    static String of(Report report) {
        StringBuilder html = new StringBuilder();
        facts(html, report);
        table(html, Headlines.parts(report));
        table(html, Headlines.stones(report));
        table(html, Headlines.requirements(report));
        if (!report.troubles().isEmpty()) {
            html.append("<div class=\"trouble\">\n")
                    .append(Html.scrolling(HtmlRenderer.render(report.troubles())))
                    .append("</div>\n");
        }
        return html.length() == 0
                ? ""
                : "<section class=\"numbers\" aria-labelledby=\"numbers\">\n<h2 id=\"numbers\">The ring in numbers</h2>\n"
                        + html + "</section>\n";
    }

    private static void facts(StringBuilder html, Report report) {
        StringBuilder facts = new StringBuilder();
        Headlines.finger(report).ifPresent(finger -> fact(facts, "Finger", finger));
        if (!report.parts().isEmpty()) {
            fact(facts, "Metal", Decimals.plain(report.totalWeightG(), 3) + " g");
        }
        if (!report.fingerprint().isEmpty()) {
            fact(facts, "Fingerprint", report.fingerprint());
        }
        if (facts.length() > 0) {
            html.append("<dl>\n").append(facts).append("</dl>\n");
        }
    }

    private static void fact(StringBuilder facts, String name, String value) {
        facts.append("<div><dt>").append(name).append("</dt><dd>");
        facts.append(Html.escape(value)).append("</dd></div>\n");
    }

    private static void table(StringBuilder html, Table table) {
        if (!table.rows().isEmpty()) {
            html.append(TableHtml.of(table));
        }
    }
}
