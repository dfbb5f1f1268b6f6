// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.session;

import java.util.List;

import com.fasterxml.jackson.databind.node.ObjectNode;

import bandwright.dsl.Outcome;
import bandwright.dsl.Workbench;
import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.diagnostic.PlainRenderer;
import bandwright.dsl.source.SourceText;
import bandwright.kernel.display.Displays;

/** An expression that a client wants to know the value of. It is worked out as {@code show} would, and leaves no trace. */
final class UserExpression {
    private UserExpression() {}

    /** The value as a MIME bundle, or why there is none. */
    static ObjectNode value(Workbench workbench, String name, String expression) {
        Outcome outcome =
                workbench.run("user expression", new SourceText("user expression " + name, "show " + expression));
        if (outcome.hasErrors() || outcome.answers().isEmpty()) {
            List<Diagnostic> told = outcome.diagnostics();
            String code = told.isEmpty() ? "no-value" : told.get(0).code();
            String message = told.isEmpty() ? "this has no value" : told.get(0).message();
            return Exchange.error(
                            code, message, PlainRenderer.render(told).lines().toList())
                    .put("status", "error");
        }
        return OutputMessages.display(Displays.display(outcome.answers().get(0)))
                .put("status", "ok");
    }
}
