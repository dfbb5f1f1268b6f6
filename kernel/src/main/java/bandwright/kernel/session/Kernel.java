// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.session;

import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.function.Consumer;

import bandwright.kernel.cell.CellLanguages;
import bandwright.kernel.files.ExportFolder;
import bandwright.kernel.protocol.Channel;
import bandwright.kernel.protocol.Connection;
import bandwright.kernel.protocol.ConnectionFault;
import bandwright.kernel.protocol.Message;
import bandwright.kernel.protocol.Sockets;
import bandwright.kernel.protocol.Stamp;

/**
 * A kernel that listens. Any thread may start, await and close it.
 *
 * <pre>{@code
 * try (Kernel kernel = Kernel.start(
 *         connection, new CellLanguages(List.of()), new History(), Map.of(), new ExportFolder(Path.of("")), System.err::println)) {
 *     kernel.awaitEnd();
 * }
 * }</pre>
 */
public final class Kernel implements AutoCloseable {
    private final Stamp stamp = new Stamp();
    private final CountDownLatch ended = new CountDownLatch(1);
    private final Map<Channel, Map<String, Handler>> handlers = new HashMap<>();
    private final CellThread cells = new CellThread();
    private final Input input = new Input();
    private final RequestThread shell = new RequestThread("shell", message -> handle(Channel.SHELL, message));
    private final RequestThread control = new RequestThread("control", message -> handle(Channel.CONTROL, message));
    private final Consumer<String> log;
    private final CellLanguages languages;
    private final Sockets sockets;

    private Kernel(
            Connection connection,
            CellLanguages languages,
            History history,
            Map<String, CommTarget> targets,
            ExportFolder folder,
            Consumer<String> log)
            throws ConnectionFault {
        this.log = log;
        this.languages = languages;
        this.sockets = Sockets.open(connection, stamp, this::received, log);
        Bench bench = new Bench();
        Editing editing = new Editing(languages, bench);
        Comms comms = new Comms(targets);
        Map<String, Handler> onShell = new HashMap<>();
        onShell.put("execute_request", new Executions(languages, bench, cells, input, shell, history, folder));
        onShell.put("complete_request", editing::complete);
        onShell.put("inspect_request", editing::inspect);
        onShell.put("is_complete_request", editing::isComplete);
        onShell.put("history_request", new HistoryRequests(history));
        onShell.put("comm_info_request", comms::info);
        onShell.put("comm_open", comms::open);
        onShell.put("comm_msg", comms::message);
        onShell.put("comm_close", comms::close);
        onShell.put("kernel_info_request", KernelInfo::answer);
        onShell.put("shutdown_request", this::shutdown);
        Map<String, Handler> onControl = new HashMap<>();
        onControl.put("kernel_info_request", KernelInfo::answer);
        onControl.put("interrupt_request", this::interrupt);
        onControl.put("shutdown_request", this::shutdown);
        handlers.put(Channel.SHELL, onShell);
        handlers.put(Channel.CONTROL, onControl);
    }

    /**
     * Opens the sockets and begins to answer.
     *
     * @param targets what comms may be opened to, by name
     * @param folder where exports are written
     * @param log hears of what was dropped or went wrong
     */
    public static Kernel start(
            Connection connection,
            CellLanguages languages,
            History history,
            Map<String, CommTarget> targets,
            ExportFolder folder,
            Consumer<String> log)
            throws ConnectionFault {
        Kernel kernel = new Kernel(connection, languages, history, targets, folder, log);
        kernel.shell.start();
        kernel.control.start();
        return kernel;
    }

    /** Waits until a client or {@link #end} ends the kernel. */
    public void awaitEnd() throws InterruptedException {
        ended.await();
    }

    /** Lets {@link #awaitEnd} return. */
    public void end() {
        ended.countDown();
    }

    /** Sends what waits, then closes the sockets. A cell that does not heed the interrupt runs on until the process ends. */
    @Override
    public void close() {
        end();
        shell.end();
        control.end();
        cells.interrupt();
        sockets.close();
    }

    private void received(Channel channel, Message message) {
        switch (channel) {
            case SHELL -> shell.add(message);
            case CONTROL -> control.add(message);
            case STDIN -> input.answered(message);
            case IOPUB, HB -> log.accept("dropped from " + channel + ": nobody sends messages there");
        }
    }

    /** Busy and idle around every message, whatever becomes of it. */
    private void handle(Channel channel, Message message) {
        Exchange exchange = new Exchange(sockets, stamp, channel, message);
        exchange.state("busy");
        try {
            Handler handler = handlers.getOrDefault(channel, Map.of()).get(message.type());
            if (handler == null) {
                log.accept("passed over: " + message.type() + " on " + channel + ", which this kernel does not know");
            } else {
                handler.handle(exchange);
            }
        } catch (BadRequest fault) {
            log.accept("refused: " + fault.sentence());
            fail(exchange, "bad-request", fault.sentence());
        } catch (RuntimeException | Error failure) {
            log.accept("the program failed at " + message.type() + "; this is a fault of ours: " + failure);
            fail(exchange, "program-fault", "the program failed; this is a fault of ours: " + failure);
        }
        exchange.state("idle");
    }

    private static void fail(Exchange exchange, String name, String message) {
        if (exchange.wantsReply()) {
            exchange.fail(name, message);
        }
    }

    private void interrupt(Exchange exchange) {
        cells.interrupt();
        languages.interrupted();
        exchange.reply(Exchange.ok());
    }

    private void shutdown(Exchange exchange) {
        boolean restart = exchange.content().path("restart").asBoolean();
        exchange.reply(Exchange.ok().put("restart", restart));
        exchange.publish("shutdown_reply", Exchange.ok().put("restart", restart));
        // Idle before the end: a client waits for it.
        exchange.state("idle");
        end();
    }
}
