// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.export;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.List;

/** The script that turns models, with the library that it needs: the same for every page and every model. */
final class TurntableScript {
    /** The version is the one pinned in the root POM. */
    private static final String LIBRARY = "/META-INF/resources/webjars/three/0.181.1/";

    private static final List<String> OWN =
            List.of("studio", "model", "cut", "views", "marks", "viewer", "form", "page");

    /** What stands between the tags. */
    static final String TEXT = Html.legal(text());

    /** Its place in a content security policy: this script and no other. */
    static final String SOURCE = "'sha256-" + digest(TEXT) + "'";

    private TurntableScript() {}

    static String style() {
        return read("turntable/turntable.css");
    }

    /** A module as it is, for a page whose browser may import it. */
    static String module(String specifier) {
        return switch (specifier) {
            case "three.core.min.js", "three.module.min.js" -> read(LIBRARY + "build/" + specifier);
            case "OrbitControls.js" -> read(LIBRARY + "examples/jsm/controls/" + specifier);
            case "GLTFLoader.js" -> read(LIBRARY + "examples/jsm/loaders/" + specifier);
            case "BufferGeometryUtils.js" -> read(LIBRARY + "examples/jsm/utils/" + specifier);
            default -> read("turntable/" + specifier);
        };
    }

    private static String text() {
        ModuleBundle bundle = new ModuleBundle();
        bundle.add("./three.core.min.js", read(LIBRARY + "build/three.core.min.js"));
        bundle.add("three", read(LIBRARY + "build/three.module.min.js"));
        addon(bundle, "../utils/BufferGeometryUtils.js", "utils/BufferGeometryUtils.js");
        addon(bundle, "three/addons/loaders/GLTFLoader.js", "loaders/GLTFLoader.js");
        addon(bundle, "three/addons/controls/OrbitControls.js", "controls/OrbitControls.js");
        OWN.forEach(name -> bundle.add("./" + name + ".js", read("turntable/" + name + ".js")));
        // The comment makes the mark of XML harmless to the script, and the mark makes the script harmless to XML.
        return "//<![CDATA[\n/* With three.js:\n" + read(LIBRARY + "LICENSE").strip() + "\n*/\n" + bundle.script()
                + "//]]>";
    }

    private static void addon(ModuleBundle bundle, String specifier, String path) {
        bundle.add(specifier, read(LIBRARY + "examples/jsm/" + path));
    }

    private static String digest(String text) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return Base64.getEncoder().encodeToString(digest);
        } catch (NoSuchAlgorithmException missing) {
            throw new IllegalStateException(missing);
        }
    }

    private static String read(String name) {
        try (InputStream stream = TurntableScript.class.getResourceAsStream(name)) {
            if (stream == null) {
                throw new IllegalStateException(name + " is missing");
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8).replace("\r\n", "\n");
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}
