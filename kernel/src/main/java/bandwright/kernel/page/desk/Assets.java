// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.desk;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import bandwright.kernel.page.export.Fragments;
import bandwright.kernel.page.server.Reply;
import bandwright.kernel.page.server.Route;

/** What belongs to the page: a fixed list of texts, each at a path of its own. */
final class Assets {
    private static final String JARS = "/META-INF/resources/webjars/";

    /** Modules of the editor: the name by which they import one another, and where they are. */
    private static final Map<String, String> EDITOR = new LinkedHashMap<>();

    static {
        EDITOR.put("@codemirror/autocomplete", "codemirror__autocomplete/6.20.3/dist/index.js");
        EDITOR.put("@codemirror/commands", "codemirror__commands/6.10.4/dist/index.js");
        EDITOR.put("@codemirror/language", "codemirror__language/6.12.4/dist/index.js");
        EDITOR.put("@codemirror/lint", "codemirror__lint/6.9.7/dist/index.js");
        EDITOR.put("@codemirror/state", "codemirror__state/6.7.1/dist/index.js");
        EDITOR.put("@codemirror/view", "codemirror__view/6.43.7/dist/index.js");
        EDITOR.put("crelt", "crelt/1.0.7/index.js");
        EDITOR.put("@lezer/common", "lezer__common/1.5.2/dist/index.js");
        EDITOR.put("@lezer/highlight", "lezer__highlight/1.2.3/dist/index.js");
        EDITOR.put("@lezer/lr", "lezer__lr/1.4.10/dist/index.js");
        EDITOR.put("@marijn/find-cluster-break", "marijn__find-cluster-break/1.0.3/src/index.js");
        EDITOR.put("style-mod", "style-mod/4.1.3/src/style-mod.js");
        EDITOR.put("w3c-keyname", "w3c-keyname/2.2.8/index.js");
    }

    /** Of the model to turn. */
    private static final List<String> MODEL =
            List.of("studio.js", "model.js", "cut.js", "views.js", "marks.js", "viewer.js", "form.js");

    private static final List<String> OWN =
            List.of("ask.js", "editor.js", "bench.js", "typing.js", "cells.js", "handout.js", "present.js", "desk.js");

    private Assets() {}

    /** The map by which the browser finds modules, as JSON. */
    static String importMap() {
        StringBuilder map = new StringBuilder("{\"imports\":{");
        EDITOR.forEach((name, path) ->
                map.append('"').append(name).append("\":\"").append(path(name)).append("\","));
        map.append("\"three\":\"/asset/three/build/three.module.min.js\",");
        map.append("\"three/addons/loaders/GLTFLoader.js\":\"/asset/three/loaders/GLTFLoader.js\",");
        map.append("\"three/addons/controls/OrbitControls.js\":\"/asset/three/controls/OrbitControls.js\"");
        return map.append("}}").toString();
    }

    private static String path(String module) {
        return "/asset/editor/" + module.replace("@", "").replace('/', '-') + ".js";
    }

    /** By their paths. */
    static Map<String, Route> routes() {
        Map<String, Route> routes = new LinkedHashMap<>();
        EDITOR.forEach((name, at) -> script(routes, path(name), read(JARS + at)));
        script(routes, "/asset/three/build/three.module.min.js", Fragments.module("three.module.min.js"));
        script(routes, "/asset/three/build/three.core.min.js", Fragments.module("three.core.min.js"));
        script(routes, "/asset/three/loaders/GLTFLoader.js", Fragments.module("GLTFLoader.js"));
        script(routes, "/asset/three/controls/OrbitControls.js", Fragments.module("OrbitControls.js"));
        script(routes, "/asset/three/utils/BufferGeometryUtils.js", Fragments.module("BufferGeometryUtils.js"));
        MODEL.forEach(name -> script(routes, "/asset/model/" + name, Fragments.module(name)));
        OWN.forEach(name -> script(routes, "/asset/" + name, read(name)));
        String style = Fragments.style() + read("desk.css");
        routes.put("/asset/desk.css", reads("text/css; charset=utf-8", style));
        return routes;
    }

    private static void script(Map<String, Route> routes, String path, String text) {
        routes.put(path, reads("text/javascript; charset=utf-8", text));
    }

    private static Route reads(String type, String text) {
        Reply reply = new Reply(200, type, text.getBytes(StandardCharsets.UTF_8));
        return Route.reads(request -> reply);
    }

    static String read(String name) {
        try (InputStream stream = Assets.class.getResourceAsStream(name)) {
            if (stream == null) {
                throw new IllegalStateException(name + " is missing");
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}
