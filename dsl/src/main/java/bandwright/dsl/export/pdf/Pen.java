// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.export.pdf;

import java.io.IOException;
import java.util.List;

import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.util.Matrix;

/** Puts letters and lines on a page. Coordinates in mm, y upwards from the lower edge. */
final class Pen {
    static final int INK = 0x1c1a17;
    static final int FAINT = 0x6b665e;

    private final PDPageContentStream stream;
    private final Letters letters;

    Pen(PDPageContentStream stream, Letters letters) {
        this.stream = stream;
        this.letters = letters;
    }

    PDPageContentStream stream() {
        return stream;
    }

    /** A text from a point on its base line. */
    void text(String text, double x, double y, double size, int colour) throws IOException {
        write(text, Matrix.getTranslateInstance((float) x, (float) y), size, colour, false);
    }

    /** As {@link #text}, with heavier strokes. */
    void heavy(String text, double x, double y, double size) throws IOException {
        write(text, Matrix.getTranslateInstance((float) x, (float) y), size, INK, true);
    }

    /** A text that runs upwards, turned left by a quarter. */
    void upwards(String text, double x, double y, double size, int colour) throws IOException {
        write(text, new Matrix(0, 1, -1, 0, (float) x, (float) y), size, colour, false);
    }

    private void write(String text, Matrix place, double size, int colour, boolean heavy) throws IOException {
        String settable = letters.settable(text);
        if (settable.isBlank()) {
            return;
        }
        stream.beginText();
        stream.setFont(letters.font(), (float) size);
        fill(colour);
        if (heavy) {
            stroke(colour);
            stream.setLineWidth((float) (size / 28));
            stream.setRenderingMode(RenderingMode.FILL_STROKE);
        } else {
            stream.setRenderingMode(RenderingMode.FILL);
        }
        stream.setTextMatrix(place);
        stream.showText(settable);
        stream.endText();
    }

    void line(double x1, double y1, double x2, double y2, double width, int colour) throws IOException {
        stroke(colour);
        stream.setLineWidth((float) width);
        stream.setLineDashPattern(new float[0], 0);
        stream.moveTo((float) x1, (float) y1);
        stream.lineTo((float) x2, (float) y2);
        stream.stroke();
    }

    void dash(List<Double> lengths) throws IOException {
        float[] dash = new float[lengths.size()];
        for (int i = 0; i < dash.length; i++) {
            dash[i] = lengths.get(i).floatValue();
        }
        stream.setLineDashPattern(dash, 0);
    }

    /** @param colour 0xRRGGBB */
    void fill(int colour) throws IOException {
        stream.setNonStrokingColor(part(colour, 16), part(colour, 8), part(colour, 0));
    }

    /** @param colour 0xRRGGBB */
    void stroke(int colour) throws IOException {
        stream.setStrokingColor(part(colour, 16), part(colour, 8), part(colour, 0));
    }

    private static float part(int colour, int shift) {
        return (colour >> shift & 255) / 255f;
    }
}
