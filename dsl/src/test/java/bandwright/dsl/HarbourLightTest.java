// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl;

import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;

import bandwright.dsl.diagnostic.PlainRenderer;
import bandwright.dsl.source.SourceText;

import static org.assertj.core.api.Assertions.assertThat;

class HarbourLightTest {
    @Test
    void whole_example() throws Exception {
        String text = Files.readString(Path.of("src/test/golden/parse/harbour-light.ring"));
        for (int i = 0; i < 4; i++) {
            long t = System.nanoTime();
            Outcome outcome = Workbench.empty().run("c", new SourceText("cell 1", text));
            System.out.println("ms " + (System.nanoTime() - t) / 1e6);
            outcome.diagnostics().forEach(d -> System.out.println(PlainRenderer.render(d)));
            if (i == 0)
                for (Answer a : outcome.answers()) {
                    System.out.println(a.plainText());
                    if (a instanceof Answer.Pictured p)
                        Files.write(Path.of("/tmp/ring.png"), p.picture().png());
                    if (a instanceof Answer.Drawn p) {
                        Files.write(Path.of("/tmp/section.png"), p.picture().png());
                        Files.writeString(Path.of("/tmp/section.svg"), p.svg());
                    }
                }
            t = System.nanoTime();
            System.out.println(outcome.workbench().report());
            System.out.println("ms " + (System.nanoTime() - t) / 1e6);
            assertThat(outcome.diagnostics()).isEmpty();
        }
    }
}
