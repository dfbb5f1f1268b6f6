// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.jspecify.annotations.Nullable;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

import bandwright.dsl.Outcome;
import bandwright.dsl.edit.Documentation;
import bandwright.dsl.edit.Formatter;
import bandwright.dsl.source.Place;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.view.Turntable;
import bandwright.kernel.notebook.CellKind;
import bandwright.kernel.notebook.NotebookCell;
import bandwright.kernel.page.server.Events;
import bandwright.kernel.page.server.Reply;
import bandwright.kernel.page.server.Request;
import bandwright.kernel.page.server.Route;

/** What pages ask, a path each: JSON in, JSON out. What a person asks in vain is answered with a sentence and 409. */
public final class Desk implements AutoCloseable {
    private static final ObjectMapper JSON = new ObjectMapper();

    /** Open at a time; nobody works at more. */
    private static final int MOST_OPEN = 20;

    private final NotebookFolder folder;
    private final Events events;
    private final Map<String, OpenNotebook> open = new LinkedHashMap<>();

    /** @param folder whose notebooks are worked at; nothing outside of it is read or written */
    public Desk(Path folder, Events events) throws IOException {
        this.folder = new NotebookFolder(folder);
        this.events = events;
    }

    /** What one question does, with the notebook locked. */
    @FunctionalInterface
    private interface Work {
        ObjectNode of(OpenNotebook notebook, JsonNode asked) throws DeskFault;
    }

    @FunctionalInterface
    private interface FolderWork {
        ObjectNode of(JsonNode asked) throws DeskFault;
    }

    /** By their paths. */
    public Map<String, Route> routes() {
        Map<String, Route> routes = new LinkedHashMap<>();
        folder(routes, "files", asked -> files());
        folder(routes, "new", this::create);
        folder(routes, "rename", this::rename);
        folder(routes, "stop", this::stop);
        folder(routes, "format", Desk::format);
        notebook(routes, "open", (notebook, asked) -> DeskJson.whole(notebook));
        notebook(routes, "change", this::change);
        notebook(routes, "answer", Desk::answer);
        notebook(
                routes,
                "checks",
                (notebook, asked) ->
                        DeskJson.checks(notebook.design().workbench().findings()));
        notebook(routes, "model", (notebook, asked) -> model(notebook));
        notebook(routes, "try", Desk::attempt);
        notebook(routes, "take", this::take);
        notebook(routes, "complete", Desk::complete);
        notebook(routes, "explain", Desk::explain);
        notebook(routes, "save", Desk::save);
        return routes;
    }

    private void folder(Map<String, Route> routes, String path, FolderWork work) {
        routes.put("/desk/" + path, Route.changes(request -> answered(request, work)));
    }

    private void notebook(Map<String, Route> routes, String path, Work work) {
        folder(routes, path, asked -> {
            OpenNotebook notebook = opened(asked.path("name").asText());
            if (path.equals("change") || path.equals("try")) {
                // What a cell works at is of the design as it was: it is asked again.
                notebook.stopAnswering();
            }
            synchronized (notebook.lock()) {
                return work.of(notebook, asked);
            }
        });
    }

    private static Reply answered(Request request, FolderWork work) {
        try {
            JsonNode asked = JSON.readTree(request.body());
            return Reply.json(
                    JSON.writeValueAsString(work.of(asked == null ? JsonNodeFactory.instance.objectNode() : asked)));
        } catch (DeskFault fault) {
            return Reply.json(
                    409,
                    JsonNodeFactory.instance
                            .objectNode()
                            .put("fault", fault.sentence())
                            .toString());
        } catch (JsonProcessingException failure) {
            return Reply.words(400, "This is no JSON.");
        } catch (IOException failure) {
            return Reply.words(400, "This cannot be read.");
        }
    }

    private OpenNotebook opened(String name) throws DeskFault {
        synchronized (open) {
            OpenNotebook notebook = open.get(name);
            if (notebook == null) {
                notebook = new OpenNotebook(name, folder);
                open.put(name, notebook);
                if (open.size() > MOST_OPEN) {
                    close(open.keySet().iterator().next());
                }
            }
            return notebook;
        }
    }

    private void close(String name) throws DeskFault {
        OpenNotebook notebook = open.remove(name);
        if (notebook != null) {
            notebook.stop();
            synchronized (notebook.lock()) {
                notebook.putAway();
                notebook.close();
            }
        }
    }

    private ObjectNode files() throws DeskFault {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("folder", String.valueOf(folder.path().getFileName()));
        ArrayNode files = node.putArray("files");
        folder.names().forEach(files::add);
        ArrayNode starts = node.putArray("starts");
        Starts.names().forEach(starts::add);
        return node;
    }

    private ObjectNode create(JsonNode asked) throws DeskFault {
        String name = asked.path("name").asText();
        folder.create(name, Starts.text(asked.path("start").asText(), name));
        return JsonNodeFactory.instance.objectNode().put("name", name);
    }

    private ObjectNode rename(JsonNode asked) throws DeskFault {
        String from = asked.path("from").asText();
        String to = asked.path("to").asText();
        synchronized (open) {
            close(from);
            folder.rename(from, to);
        }
        return JsonNodeFactory.instance.objectNode().put("name", to);
    }

    private ObjectNode stop(JsonNode asked) throws DeskFault {
        opened(asked.path("name").asText()).stop();
        return JsonNodeFactory.instance.objectNode();
    }

    private static ObjectNode format(JsonNode asked) {
        return JsonNodeFactory.instance
                .objectNode()
                .put("source", Formatter.format(asked.path("source").asText()));
    }

    /** Changes of one page, in their order; other pages hear of them. */
    private ObjectNode change(OpenNotebook notebook, JsonNode asked) throws DeskFault {
        ArrayNode others = JsonNodeFactory.instance.arrayNode();
        String made = null;
        try {
            for (JsonNode change : asked.path("changes")) {
                String id = change.path("id").asText();
                switch (change.path("do").asText()) {
                    case "type" -> {
                        String other = notebook.type(
                                id,
                                change.path("base").asInt(),
                                change.path("source").asText());
                        if (other != null) {
                            others.add(other);
                        }
                    }
                    case "insert" ->
                        made = notebook.insert(
                                kind(change), change.path("source").asText(), optional(change.path("after")));
                    case "remove" -> notebook.remove(id);
                    case "move" -> notebook.move(id, change.path("by").asInt());
                    case "turn" -> notebook.turnInto(id, kind(change));
                    default -> throw new DeskFault("there is no such change");
                }
            }
        } finally {
            // What was done before a fault is done.
            notebook.changed();
        }
        ObjectNode state = DeskJson.state(notebook);
        state.set("conflicts", others);
        if (made != null) {
            state.put("made", made);
        }
        tell(notebook, asked);
        return state;
    }

    private void tell(OpenNotebook notebook, JsonNode asked) {
        events.tell(JsonNodeFactory.instance
                .objectNode()
                .put("changed", notebook.name())
                .put("by", asked.path("page").asText())
                .toString());
    }

    private static @Nullable String optional(JsonNode node) {
        return node.isTextual() ? node.asText() : null;
    }

    private static CellKind kind(JsonNode change) throws DeskFault {
        return switch (change.path("kind").asText()) {
            case "code" -> CellKind.CODE;
            case "markdown" -> CellKind.MARKDOWN;
            case "raw" -> CellKind.RAW;
            default -> throw new DeskFault("there is no such kind of cell");
        };
    }

    private static ObjectNode answer(OpenNotebook notebook, JsonNode asked) throws DeskFault {
        String id = asked.path("id").asText();
        if (notebook.design().acts(id) && !asked.path("person").asBoolean()) {
            throw new DeskFault("this cell writes files or is a program: it runs when you say so");
        }
        int number = 1;
        for (NotebookCell cell : notebook.cells()) {
            if (cell.id().equals(id)) {
                break;
            }
            number++;
        }
        ObjectNode node = DeskJson.ran(notebook, id, notebook.answer(id), number);
        DeskJson.numbers(node, notebook.design().workbench());
        return node;
    }

    private static ObjectNode model(OpenNotebook notebook) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        Turntable turntable = notebook.design().workbench().turntable(true).orElse(null);
        if (turntable == null) {
            return node.put("none", true);
        }
        put(node, turntable);
        return node;
    }

    private static void put(ObjectNode node, Turntable turntable) {
        try {
            node.set("told", JSON.readTree(turntable.json()));
        } catch (JsonProcessingException failure) {
            throw new IllegalStateException(failure);
        }
        node.put("glb", Base64.getEncoder().encodeToString(turntable.glb()));
    }

    /** A handle is held: the numbers with it elsewhere, and nothing is kept. */
    private static ObjectNode attempt(OpenNotebook notebook, JsonNode asked) throws DeskFault {
        Outcome outcome = notebook.design()
                .tried(asked.path("handle").asText(), asked.path("value").asText());
        if (outcome.hasErrors()) {
            throw new DeskFault(outcome.diagnostics().get(0).message());
        }
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        DeskJson.numbers(node, outcome.workbench());
        if (asked.path("model").asBoolean()) {
            outcome.workbench().turntable(false).ifPresent(turntable -> put(node, turntable));
        }
        return node;
    }

    /** A handle's value goes into the text of the cell that defines it, with a reason if one is given. */
    private ObjectNode take(OpenNotebook notebook, JsonNode asked) throws DeskFault {
        String handle = asked.path("handle").asText();
        Place place = notebook.design()
                .workbench()
                .valueOf(handle)
                .orElseThrow(() -> new DeskFault(handle + " has no value of its own to be changed"));
        String id = notebook.design().cellOf(place.source());
        if (id == null) {
            throw new DeskFault("the cell of " + handle + " is being written; end its line first");
        }
        String text = place.source().text();
        int from = DeskJson.units(text, place.span().start());
        int to = DeskJson.units(text, place.span().end());
        String value = asked.path("value").asText();
        String line = TakenReason.put(text.substring(to), optional(asked.path("because")));
        notebook.type(id, notebook.revision(id), text.substring(0, from) + value + line);
        notebook.changed();
        tell(notebook, JsonNodeFactory.instance.objectNode());
        return DeskJson.state(notebook);
    }

    private static ObjectNode complete(OpenNotebook notebook, JsonNode asked) {
        String source = asked.path("source").asText();
        SourceText text = new SourceText("this cell", source);
        return DeskJson.completion(source, notebook.design().workbench().completion(text, offset(source, asked)));
    }

    private static ObjectNode explain(OpenNotebook notebook, JsonNode asked) {
        String source = asked.path("source").asText();
        SourceText text = new SourceText("this cell", source);
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        notebook.design()
                .workbench()
                .documentation(text, offset(source, asked))
                .map(Documentation::text)
                .ifPresent(words -> node.put("text", words));
        return node;
    }

    private static int offset(String source, JsonNode asked) {
        int units = Math.max(0, Math.min(asked.path("at").asInt(), source.length()));
        return source.codePointCount(0, units);
    }

    private static ObjectNode save(OpenNotebook notebook, JsonNode asked) throws DeskFault {
        notebook.save();
        return JsonNodeFactory.instance.objectNode().put("saved", true);
    }

    /** Puts away what is open; what cannot be written stays in its draft, and is found at the next opening. */
    @Override
    public void close() {
        synchronized (open) {
            List.copyOf(open.keySet()).forEach(this::closeQuietly);
        }
    }

    private boolean closeQuietly(String name) {
        try {
            close(name);
            return true;
        } catch (DeskFault fault) {
            return false;
        }
    }
}
