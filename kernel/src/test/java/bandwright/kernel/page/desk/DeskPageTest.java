// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.desk;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import bandwright.kernel.page.Npm;
import bandwright.kernel.page.server.Events;
import bandwright.kernel.page.server.LocalServer;

import static org.assertj.core.api.Assertions.assertThat;

/** The page in a real browser; its pictures are left in {@code target/desk}: look at them. */
class DeskPageTest {
    @TempDir
    Path folder;

    @Test
    void a_newcomer_finds_the_way() throws Exception {
        Npm.need();
        Npm.needBrowser();
        Path pictures = Files.createDirectories(Path.of("target", "desk")).toAbsolutePath();
        Files.writeString(folder.resolve("it.ipynb"), Starts.text("a plain band", "it.ipynb"));
        List<String> links = new CopyOnWriteArrayList<>();
        try (Events events = new Events();
                Desk desk = new Desk(folder, events);
                LocalServer server = LocalServer.start(0, DeskPage.routes(desk), events, link -> {
                    links.add(link);
                    keep(pictures, link);
                })) {
            assertThat(server.port()).isPositive();
            String said = Npm.run(List.of(
                    "node",
                    Npm.script("desk.js"),
                    Npm.MODULES.toString(),
                    Npm.CHROMIUM.toString(),
                    links.get(0),
                    pictures.toString()));

            assertThat(said).isEqualTo("all is well\n");
        }
        assertThat(Files.readString(folder.resolve("it.ipynb"))).contains("she likes it wide", "from the other page");
    }

    private static void keep(Path pictures, String link) {
        try {
            Files.writeString(pictures.resolve("next-link"), link);
        } catch (java.io.IOException failure) {
            throw new java.io.UncheckedIOException(failure);
        }
    }
}
