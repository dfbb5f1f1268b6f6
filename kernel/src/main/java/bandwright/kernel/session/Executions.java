// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import com.fasterxml.jackson.databind.node.ObjectNode;

import bandwright.dsl.Outcome;
import bandwright.dsl.source.SourceText;
import bandwright.kernel.cell.CellLanguages;
import bandwright.kernel.display.Displays;
import bandwright.kernel.files.ExportFolder;
import bandwright.kernel.notebook.Output;
import bandwright.kernel.protocol.Json;

/** Executes cells. */
final class Executions implements Handler {
    /**
     * Requests that a client sent together with one that fails may still be on their way. They are waited for before anybody hears
     * of the failure: what a client sends after that is never aborted by mistake.
     */
    private static final long ON_THE_WAY_MS = 20;

    private final CellLanguages languages;
    private final Bench bench;
    private final CellThread cells;
    private final Input input;
    private final RequestThread queue;
    private final History history;
    private final ExportFolder folder;
    private final Staleness staleness = new Staleness();
    private int withoutId;

    Executions(
            CellLanguages languages,
            Bench bench,
            CellThread cells,
            Input input,
            RequestThread queue,
            History history,
            ExportFolder folder) {
        this.folder = folder;
        this.languages = languages;
        this.bench = bench;
        this.cells = cells;
        this.input = input;
        this.queue = queue;
        this.history = history;
    }

    @Override
    public void handle(Exchange exchange) throws BadRequest {
        if (queue.isAborted(exchange.request())) {
            exchange.reply(Json.object().put("status", "aborted"));
            return;
        }
        ExecuteRequest request = ExecuteRequest.of(exchange);
        if (request.stored()) {
            bench.countOn();
        }
        if (!request.silent()) {
            exchange.publish(
                    "execute_input", Json.object().put("code", request.code()).put("execution_count", bench.count()));
        }
        request.deletedCells().forEach(this::forget);
        execute(exchange, request);
    }

    private void forget(String cellId) {
        bench.forgetCell(cellId);
        languages.forget(cellId);
        staleness.forget(cellId);
    }

    private void execute(Exchange exchange, ExecuteRequest request) {
        String cellId = request.cellId().orElseGet(() -> "execution " + ++withoutId);
        SourceText text = new SourceText(request.stored() ? "cell " + bench.count() : "this cell", request.code());
        CellThread.Ran ran;
        try (WireConsole console = new WireConsole(exchange, input, request)) {
            ran = cells.run(bench.workbench(), () -> languages.of(text).run(bench.workbench(), cellId, text, console));
            ran = ran.with(folder.written(bench.workbench(), ran.outcome()));
            console.clearProgress(!ran.outcome().answers().isEmpty());
        }
        List<Output> outputs = outputs(ran);
        Optional<Output.Failure> failure = failure(outputs);
        if (ran.interrupted() || (failure.isPresent() && request.stopsOnError())) {
            abortWhatWaits();
        }
        Outcome outcome = ran.outcome();
        SourceText questions = languages.of(text).questions(cellId, text);
        boolean shows = !request.silent() && (!outcome.answers().isEmpty() || !questions.equals(text));
        List<Staleness.Shown> stale =
                staleness.after(bench.workbench(), outcome, cellId, questions, bench.count(), !shows);
        bench.put(outcome.workbench());
        if (ran.abandoned()) {
            bench.renew();
        }
        if (!request.silent()) {
            outputs.forEach(output -> OutputMessages.publish(exchange, output));
            staleness.line().ifPresent(line -> OutputMessages.publish(exchange, line));
        }
        if (request.stored()) {
            history.add(bench.count(), request.code(), plainText(outputs));
        }
        reply(exchange, request, failure, stale);
    }

    private void abortWhatWaits() {
        try {
            Thread.sleep(ON_THE_WAY_MS);
        } catch (InterruptedException ending) {
            Thread.currentThread().interrupt();
        }
        queue.abortWaiting();
    }

    private static List<Output> outputs(CellThread.Ran ran) {
        Outcome outcome = ran.outcome();
        List<Output> outputs = new ArrayList<>(Displays.outputs(outcome.diagnostics(), outcome.answers()));
        boolean stopped = ran.interrupted() && (ran.abandoned() || outcome.unanswered() > 0);
        if (stopped && failure(outputs).isEmpty()) {
            String message = ran.abandoned()
                    ? "stopped on request; the design is as it was before this cell"
                    : "stopped on request; what the cell makes stands, not all of its questions are answered";
            outputs.add(new Output.Failure("interrupted", message, List.of("interrupted: " + message)));
        }
        return outputs;
    }

    private static Optional<Output.Failure> failure(List<Output> outputs) {
        return outputs.stream()
                .filter(Output.Failure.class::isInstance)
                .map(Output.Failure.class::cast)
                .findFirst();
    }

    private static String plainText(List<Output> outputs) {
        return outputs.stream()
                .filter(Output.Display.class::isInstance)
                .map(output -> ((Output.Display) output).data().getOrDefault("text/plain", ""))
                .collect(Collectors.joining("\n"));
    }

    private void reply(
            Exchange exchange, ExecuteRequest request, Optional<Output.Failure> failure, List<Staleness.Shown> stale) {
        ObjectNode content =
                failure.map(OutputMessages::error).orElseGet(Json::object).put("execution_count", bench.count());
        content.put("status", failure.isPresent() ? "error" : "ok");
        content.putArray("payload");
        ObjectNode values = content.putObject("user_expressions");
        if (failure.isEmpty()) {
            request.expressions()
                    .forEach((name, expression) ->
                            values.set(name, UserExpression.value(bench.workbench(), name, expression)));
        }
        ObjectNode metadata = Json.object();
        var cells = metadata.putObject("bandwright").putArray("stale");
        stale.forEach(shown ->
                cells.addObject().put("cell_id", shown.cellId()).put("execution_count", shown.executionCount()));
        exchange.reply(content, metadata);
    }
}
