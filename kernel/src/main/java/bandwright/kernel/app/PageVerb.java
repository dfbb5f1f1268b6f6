// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.app;

import java.io.IOException;
import java.net.BindException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.CountDownLatch;

import bandwright.kernel.page.desk.Desk;
import bandwright.kernel.page.desk.DeskPage;
import bandwright.kernel.page.server.Events;
import bandwright.kernel.page.server.LocalServer;

/** Serves the page to work at, until it is stopped. */
record PageVerb(Terminal terminal, Path folder, int port) {
    int run() throws UsageFault {
        if (!Files.isDirectory(folder)) {
            throw new UsageFault(folder + " is no folder");
        }
        Events events = new Events();
        Desk desk;
        try {
            desk = new Desk(folder, events);
        } catch (IOException failure) {
            throw new UsageFault(folder + " cannot be read");
        }
        try {
            LocalServer server = LocalServer.start(port, DeskPage.routes(desk), events, this::tell);
            CountDownLatch ended = new CountDownLatch(1);
            // The only way out is the end of the program: what is open is put away then.
            Runtime.getRuntime()
                    .addShutdownHook(new Thread(
                            () -> {
                                server.close();
                                desk.close();
                                ended.countDown();
                            },
                            "end of the page"));
            ended.await();
            return ExitCode.GOOD;
        } catch (BindException failure) {
            throw new UsageFault("the page cannot be served at port " + port + ": it is taken, or not allowed");
        } catch (IOException failure) {
            throw new UsageFault("the page cannot be served: " + failure.getMessage());
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return ExitCode.GOOD;
        }
    }

    private void tell(String link) {
        terminal.say("Open in a browser on this machine (each link lets one browser in): " + link);
    }
}
