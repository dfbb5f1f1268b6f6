// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.display;

import java.util.ArrayList;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import bandwright.dsl.Answer;
import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.diagnostic.PlainRenderer;
import bandwright.dsl.view.Picture;
import bandwright.kernel.notebook.Output;

/**
 * Answers and diagnostics as a cell's outputs. Each answer has plain text for consoles; a drawing has pixels beside its
 * SVG, because front ends hide SVG of notebooks they do not trust; HTML stands only for tables, because it would win over
 * a drawing. Variants have all their rows as CSV too. A model to turn has its picture and, for whoever can read it, its file;
 * scripts in an output would be taken away wherever they are not trusted, so the page that is written turns it, not the output.
 */
public final class Displays {
    static final String PLAIN = "text/plain";
    static final String HTML = "text/html";
    static final String MARKDOWN = "text/markdown";
    static final String SVG = "image/svg+xml";
    static final String PNG = "image/png";
    static final String CSV = "text/csv";
    static final String GLB = "model/gltf-binary";

    /** A longer file is not put into a notebook. */
    private static final int LONGEST_CSV = 1_000_000;

    private static final int LONGEST_GLB = 1_000_000;

    private Displays() {}

    /** All outputs of a cell: warnings and notes, answers, then why it failed if it did. */
    public static List<Output> outputs(List<Diagnostic> diagnostics, List<Answer> answers) {
        List<Output> outputs = new ArrayList<>();
        List<Diagnostic> remarks =
                diagnostics.stream().filter(remark -> !remark.isError()).toList();
        List<Diagnostic> errors =
                diagnostics.stream().filter(Diagnostic::isError).toList();
        if (!remarks.isEmpty()) {
            outputs.add(new Output.Stream(Output.Channel.STDERR, PlainRenderer.render(remarks)));
        }
        answers.forEach(answer -> outputs.add(display(answer)));
        if (!errors.isEmpty()) {
            outputs.add(failure(errors));
        }
        return outputs;
    }

    /** One answer in every form it has. */
    public static Output.Display display(Answer answer) {
        Map<String, String> data = new LinkedHashMap<>();
        if (answer instanceof Answer.Drawn drawn) {
            data.put(SVG, drawn.svg());
            data.put(PNG, base64(drawn.picture()));
        } else if (answer instanceof Answer.Pictured pictured) {
            data.put(PNG, base64(pictured.picture()));
        } else if (answer instanceof Answer.Viewed viewed) {
            byte[] glb = viewed.turntable().glb();
            if (glb.length <= LONGEST_GLB) {
                data.put(GLB, Base64.getEncoder().encodeToString(glb));
            }
            data.put(PNG, base64(viewed.picture()));
        } else if (answer instanceof Answer.Tabled tabled) {
            data.put(HTML, tabled.table().html());
        } else if (answer instanceof Answer.Explained explained) {
            data.put(MARKDOWN, explained.markdown());
        } else if (answer instanceof Answer.Varied varied) {
            data.put(HTML, varied.shown().html());
            String csv = varied.csv();
            if (csv.length() <= LONGEST_CSV) {
                data.put(CSV, csv);
            }
        }
        data.put(PLAIN, answer.plainText());
        return new Output.Display(data);
    }

    /** A picture's bytes as text, without line breaks. */
    public static String base64(Picture picture) {
        return Base64.getEncoder().encodeToString(picture.png());
    }

    /** All errors of a cell as one output, named after the first. */
    private static Output.Failure failure(List<Diagnostic> errors) {
        Diagnostic first = errors.get(0);
        List<String> lines = PlainRenderer.render(errors).lines().toList();
        return new Output.Failure(first.code(), first.message(), lines);
    }
}
