// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.app;

import java.io.PrintWriter;
import java.io.StringWriter;

import org.junit.jupiter.api.Test;

import bandwright.kernel.cell.CellState;

import static org.assertj.core.api.Assertions.assertThat;

class BarProgressTest {
    @Test
    void the_bar_is_wiped_and_what_failed_stays() {
        StringWriter screen = new StringWriter();
        BarProgress bar = new BarProgress(new PrintWriter(screen));

        bar.started(1, 2);
        bar.finished(1, 2, CellState.ERROR);
        bar.started(2, 2);
        bar.working(2, 2, 40, 100);
        bar.finished(2, 2, CellState.DONE);

        assertThat(screen.toString())
                .contains("[============            ] cell 2 of 2", "] cell 2 of 2: 40 of 100 variants");
        assertThat(seen(screen.toString())).isEqualTo("cell 1 of 2: error\n2 cells run\n");
    }

    /** What is left on a screen on which a carriage return goes back to the line's start. */
    private static String seen(String written) {
        StringBuilder seen = new StringBuilder();
        StringBuilder line = new StringBuilder();
        int column = 0;
        for (int at = 0; at < written.length(); at++) {
            char sign = written.charAt(at);
            if (sign == '\r') {
                column = 0;
            } else if (sign == '\n') {
                seen.append(line.toString().stripTrailing()).append('\n');
                line.setLength(0);
                column = 0;
            } else {
                line.setLength(Math.max(line.length(), column + 1));
                line.setCharAt(column, sign);
                column++;
            }
        }
        return seen + line.toString().stripTrailing();
    }
}
