// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.desk;

import java.util.LinkedHashMap;
import java.util.Map;

import bandwright.kernel.page.server.Reply;
import bandwright.kernel.page.server.Request;
import bandwright.kernel.page.server.Route;

/** The page itself. All it shows comes later, by its scripts; nothing of a notebook is in it. */
public final class DeskPage {
    private static final String TEXT = Assets.read("desk.html");

    private DeskPage() {}

    /** All routes of the page: itself, what belongs to it, and the desk's. */
    public static Map<String, Route> routes(Desk desk) {
        Map<String, Route> routes = new LinkedHashMap<>(Assets.routes());
        routes.put("/", Route.reads(DeskPage::page));
        routes.putAll(desk.routes());
        return routes;
    }

    private static Reply page(Request request) {
        // Both are letters, digits, hyphens and underscores.
        return Reply.html(TEXT.replace("{{nonce}}", request.nonce())
                .replace("{{key}}", request.key())
                .replace("{{imports}}", Assets.importMap()));
    }
}
