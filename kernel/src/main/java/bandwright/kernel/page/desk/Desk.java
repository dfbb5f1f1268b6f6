// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

import bandwright.dsl.Outcome;
import bandwright.dsl.Workbench;
import bandwright.dsl.edit.Documentation;
import bandwright.dsl.edit.Formatter;
import bandwright.dsl.source.Place;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.view.Turntable;
import bandwright.kernel.cell.Guard;
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
    /** Those used last come last. */
    private final Map<String, OpenNotebook> open = new LinkedHashMap<>(32, 0.75f, true);

    /** @param folder whose notebooks are worked at; nothing outside of it is read or written */
    public Desk(Path folder, Events events) throws IOException {
        this.folder = new NotebookFolder(folder);
        this.events = events;
    }

    private static final Set<String> STOPPING = Set.of("change", "back", "again", "take", "try");

    /** What one question does. */
    @FunctionalInterface
    private interface NotebookWork {
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
        notebook(routes, "open", this::look);
        notebook(routes, "fresh", this::fresh);
        notebook(routes, "change", this::change);
        notebook(routes, "back", (notebook, asked) -> go(notebook, asked, false));
        notebook(routes, "again", (notebook, asked) -> go(notebook, asked, true));
        notebook(routes, "take", this::take);
        notebook(routes, "save", Desk::save);
        free(routes, "answer", Desk::answer);
        free(routes, "hand-out", Desk::handOut);
        free(
                routes,
                "checks",
                (notebook, asked) -> DeskJson.checks(workbench(notebook).findings()));
        free(routes, "model", (notebook, asked) -> model(workbench(notebook)));
        free(routes, "try", Desk::attempt);
        free(routes, "complete", Desk::complete);
        free(routes, "explain", Desk::explain);
        return routes;
    }

    /** The design of this moment; it never changes, so what takes long is asked of it without the notebook's lock. */
    private static Workbench workbench(OpenNotebook notebook) {
        synchronized (notebook.lock()) {
            return notebook.design().workbench();
        }
    }

    private void folder(Map<String, Route> routes, String path, FolderWork work) {
        routes.put("/desk/" + path, Route.changes(request -> answered(request, work)));
    }

    private void notebook(Map<String, Route> routes, String path, NotebookWork work) {
        free(routes, path, (notebook, asked) -> {
            synchronized (notebook.lock()) {
                return work.of(notebook, asked);
            }
        });
    }

    private void free(Map<String, Route> routes, String path, NotebookWork work) {
        boolean overtakes = STOPPING.contains(path);
        folder(routes, path, asked -> {
            OpenNotebook notebook = opened(asked.path("name").asText());
            if (overtakes) {
                // What a cell works at is of the design as it was: it is asked again.
                notebook.stopAnswering();
            }
            return work.of(notebook, asked);
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

    /** The notebook as it stands; a file that cannot be read any more leaves what is known of it. */
    private ObjectNode look(OpenNotebook notebook, JsonNode asked) {
        ObjectNode fresh = fresh(notebook, asked);
        return DeskJson.whole(notebook).put("readAgain", fresh.path("readAgain").asBoolean());
    }

    /** Whether another program has written the file, which then was read again. */
    private ObjectNode fresh(OpenNotebook notebook, JsonNode asked) {
        boolean again;
        try {
            again = notebook.readAgain();
        } catch (DeskFault gone) {
            again = false;
        }
        if (again) {
            tell(notebook, asked);
        }
        return JsonNodeFactory.instance.objectNode().put("readAgain", again);
    }

    /** Changes of one page, in their order; other pages hear of them. */
    private ObjectNode change(OpenNotebook notebook, JsonNode asked) throws DeskFault {
        ObjectNode state = Changes.make(notebook, asked.path("changes"));
        tell(notebook, asked);
        return state;
    }

    private ObjectNode go(OpenNotebook notebook, JsonNode asked, boolean again) throws DeskFault {
        notebook.go(again);
        tell(notebook, asked);
        return DeskJson.whole(notebook);
    }

    private void tell(OpenNotebook notebook, JsonNode asked) {
        events.tell(JsonNodeFactory.instance
                .objectNode()
                .put("changed", notebook.name())
                .put("by", asked.path("page").asText())
                .toString());
    }

    private static ObjectNode answer(OpenNotebook notebook, JsonNode asked) throws DeskFault {
        String id = asked.path("id").asText();
        OpenNotebook.Ran ran =
                notebook.answer(id, asked.path("person").asBoolean()).orElse(null);
        synchronized (notebook.lock()) {
            if (ran == null) {
                return JsonNodeFactory.instance.objectNode().put("overtaken", true);
            }
            ObjectNode node = DeskJson.ran(notebook, id, ran);
            DeskJson.numbers(node, notebook.design().workbench());
            return node;
        }
    }

    /** A sheet or a handout, for the browser to keep; nothing is written here. */
    private static ObjectNode handOut(OpenNotebook notebook, JsonNode asked) throws DeskFault {
        boolean programs = asked.path("programs").asBoolean();
        String name = notebook.name();
        HandOut made = switch (asked.path("what").asText()) {
            case "sheet" -> notebook.handOut((now, workbench) -> HandOut.sheet(name, now, workbench));
            case "page" -> notebook.handOut((now, workbench) -> HandOut.page(name, now, programs));
            case "paper" -> notebook.handOut((now, workbench) -> HandOut.paper(name, now, programs));
            default -> throw new DeskFault("there is no such thing to hand out");
        };
        return JsonNodeFactory.instance
                .objectNode()
                .put("file", made.file())
                .put("type", made.type())
                .put("bytes", Base64.getEncoder().encodeToString(made.bytes()));
    }

    private static ObjectNode model(Workbench workbench) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        Turntable turntable = workbench.turntable(true).orElse(null);
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
        Outcome outcome = Guard.withValue(
                workbench(notebook),
                asked.path("handle").asText(),
                asked.path("value").asText());
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
        String line = TakenReason.put(text.substring(to), Changes.optional(asked.path("because")));
        Past.Moment before = notebook.moment();
        notebook.type(id, Set.of(text), text.substring(0, from) + value + line);
        notebook.changed(before, null);
        tell(notebook, JsonNodeFactory.instance.objectNode());
        return DeskJson.state(notebook);
    }

    private static ObjectNode complete(OpenNotebook notebook, JsonNode asked) {
        String source = asked.path("source").asText();
        SourceText text = new SourceText("this cell", source);
        return DeskJson.completion(source, workbench(notebook).completion(text, offset(source, asked)));
    }

    private static ObjectNode explain(OpenNotebook notebook, JsonNode asked) {
        String source = asked.path("source").asText();
        SourceText text = new SourceText("this cell", source);
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        workbench(notebook)
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
