// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl;

import bandwright.dsl.view.Chart;
import bandwright.dsl.view.drawing.ChartDrawing;
import bandwright.dsl.view.drawing.Drawing;
import bandwright.dsl.view.drawing.DrawingPainter;
import bandwright.dsl.view.drawing.SvgWriter;

/** Charts and other drawings as answers. */
public final class Charts {
    private static final int PIXELS = 1000;

    private Charts() {}

    /** A chart as a drawing, in lines and in pixels. */
    public static Answer.Drawn drawn(Chart chart) {
        return drawn(ChartDrawing.of(chart));
    }

    /** Any drawing, likewise. */
    static Answer.Drawn drawn(Drawing drawing) {
        return new Answer.Drawn(drawing, SvgWriter.write(drawing), DrawingPainter.picture(drawing, PIXELS));
    }
}
