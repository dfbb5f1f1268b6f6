// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;

import bandwright.dsl.Answer;
import bandwright.dsl.Report;
import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.diagnostic.Severity;
import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.source.Span;
import bandwright.dsl.view.Picture;
import bandwright.dsl.view.Table;
import bandwright.dsl.view.Turntable;
import bandwright.dsl.view.drawing.Drawing;

/** Values for tests, as the language would give them. */
public final class Samples {
    /** The folder of the whole project. */
    public static final Path REPOSITORY = Path.of(System.getProperty("repository", ".."));

    public static final Path HARBOUR_LIGHT = REPOSITORY.resolve("notebooks").resolve("harbour-light.ipynb");

    /** The text of a whole ring, its only definition a breadth. */
    public static final String RING = """
            a = 4 mm
            profile dome = flat(width: a, height: 2 mm)
            band shank { finger ISO 57  profile dome  metal silver-925 }
            """;

    private Samples() {}

    public static Answer.Requirement requirement(boolean passed) {
        return new Answer.Requirement(
                "gap(lights) >= 0.12 mm",
                passed,
                passed ? "0.154 mm" : "0.086 mm",
                new Answer.Margin(0.034, "mm", 28.25, "0.034 mm (28.3 %)"),
                "the setter's tool needs <room>",
                null);
    }

    public static Report report(boolean passed) {
        return new Report(
                "Harbour light",
                new Report.FingerLine("ISO 57", 18.143663, 57),
                List.of(
                        new Report.PartLine(
                                "shank", "white-gold-585-pd", 250.1234567, 14.2, "a <source>", 3.5517531, true, 1200),
                        new Report.PartLine("stripe", "red-gold-585", 1e-7, 13.2, "another", 1200000, true, 800)),
                List.of(
                        new Report.RowLine(
                                "lights", "stripe", "round diamond 1.5 mm", 37, 1.5, 0.153846, 1.65, 0.0135, 0.4995),
                        new Report.RowLine("star", "stripe", "round ruby 2 mm", 1, 2, null, null, 0.04, 0.04)),
                List.of(requirement(passed)),
                List.of(),
                List.of(),
                "0123456789abcdef");
    }

    public static Report reportWithTrouble() {
        return new Report(
                null, null, List.of(), List.of(), List.of(), List.of(), List.of(diagnostic(Severity.ERROR)), "");
    }

    public static Diagnostic diagnostic(Severity severity) {
        SourceText text = new SourceText("cell 3", "thickness = breadth + <b>\n");
        return new Diagnostic(
                "unit-mismatch",
                severity,
                "a length and a <weight> cannot be added",
                text.place(new Span(12, 19)),
                List.of(),
                null,
                "two quantities of the same kind",
                null,
                null);
    }

    public static Table table() {
        return new Table(
                "Weights",
                List.of(Table.Column.words("part"), Table.Column.numbers("weight", "g")),
                List.of(List.of("shank & collar", "3.552")),
                List.of());
    }

    public static Picture picture() {
        BufferedImage image = new BufferedImage(64, 40, BufferedImage.TYPE_INT_RGB);
        for (int x = 0; x < 64; x++) {
            image.setRGB(x, x * 39 / 63, 0xE0A276);
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, "png", bytes);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
        return new Picture(64, 40, bytes.toByteArray(), "A band with \"37\" stones: white, red");
    }

    public static Answer.Drawn drawn() {
        String svg = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                + "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 4 4\"><defs><clipPath id=\"a\"><rect"
                + " width=\"4\" height=\"4\"/></clipPath></defs><path clip-path=\"url(#a)\" d=\"M0 0L4 4\"/></svg>\n";
        Drawing drawing = new Drawing("Section at 0 deg", "A line", new Bounds(0, 0, 4, 4), 10, List.of());
        return new Answer.Drawn(drawing, svg, picture());
    }

    public static Answer.Viewed viewed() {
        Turntable turntable = new Turntable(
                "Harbour light", new byte[] {1, 2, 3}, "Model to turn", List.of(), Map.of(), List.of(), 4, 10);
        return new Answer.Viewed(turntable, picture());
    }

    /** Writes a text into a file and gives the file. */
    public static Path file(Path folder, String name, String text) {
        try {
            return Files.writeString(folder.resolve(name), text);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    /** A notebook's JSON, with cells given as JSON. */
    public static String notebook(int minor, String metadata, String... cells) {
        return "{\"cells\": [" + String.join(", ", cells) + "], \"metadata\": " + metadata
                + ", \"nbformat\": 4, \"nbformat_minor\": " + minor + "}";
    }

    /** A code cell's JSON. */
    public static String code(String id, String source) {
        return "{\"cell_type\": \"code\", \"id\": \"" + id
                + "\", \"metadata\": {}, \"execution_count\": null, \"outputs\": [], \"source\": [\""
                + source.replace("\"", "\\\"").replace("\n", "\\n\", \"") + "\"]}";
    }
}
