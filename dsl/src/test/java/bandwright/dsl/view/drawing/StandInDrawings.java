// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.drawing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes the stand-in section for a look at it. Argument: a folder. */
final class StandInDrawings {
    private StandInDrawings() {}

    public static void main(String[] arguments) throws IOException {
        Path folder = Path.of(arguments[0]);
        Drawing drawing = SectionDrawing.of(StandInSection.section(), 20);
        Files.writeString(folder.resolve("section.svg"), SvgWriter.write(drawing));
        Files.write(
                folder.resolve("section.png"),
                DrawingPainter.picture(drawing, 1000).png());
        Drawing small = SectionDrawing.of(StandInSection.section(), 10);
        Files.write(
                folder.resolve("section10.png"),
                DrawingPainter.picture(small, 800).png());
    }
}
