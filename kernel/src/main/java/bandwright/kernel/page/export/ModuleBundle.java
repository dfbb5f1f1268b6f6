// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.export;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.StringJoiner;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * ECMAScript modules as one plain script, because modules of a page that was opened as a file cannot import each other unless the page allows
 * scripts of any origin. Each becomes a function that gives what it exports. Read are the forms that our modules and the libraries use: imports and
 * exports of lists of names in braces, nothing else.
 */
final class ModuleBundle {
    private static final String FROM = "\\s*from\\s*[\"']([^\"']+)[\"']";
    private static final Pattern IMPORT =
            Pattern.compile("(?:^|(?<=;))\\s*import\\s*\\{([^}]*)\\}" + FROM + ";?", Pattern.MULTILINE);
    private static final Pattern EXPORT = Pattern.compile("\\bexport\\s*\\{([^}]*)\\}(?:" + FROM + ")?;?");
    private static final Pattern RENAMED = Pattern.compile("\\s+as\\s+");

    private final Map<String, String> known = new LinkedHashMap<>();
    private final StringBuilder script = new StringBuilder("(() => {\n\"use strict\";\nconst modules = {};\n");

    /**
     * Adds a module; those that it imports must have been added.
     *
     * @param specifier by which others import it
     */
    void add(String specifier, String text) {
        StringJoiner given = new StringJoiner(", ", "return {", "};\n");
        Matcher exports = EXPORT.matcher(text);
        StringBuilder body = new StringBuilder();
        while (exports.find()) {
            String from = exports.group(2);
            for (String[] names : names(exports.group(1))) {
                String own = names[0].equals("default") ? "[\"default\"]" : "." + names[0];
                given.add(names[1] + ": " + (from == null ? names[0] : module(from) + own));
            }
            exports.appendReplacement(body, "");
        }
        exports.appendTail(body);
        Matcher imports = IMPORT.matcher(body);
        StringBuilder code = new StringBuilder();
        while (imports.find()) {
            StringJoiner taken = new StringJoiner(", ", "\nconst {", "} = " + module(imports.group(2)) + ";");
            names(imports.group(1)).forEach(names -> taken.add(names[0] + ": " + names[1]));
            imports.appendReplacement(code, Matcher.quoteReplacement(taken.toString()));
        }
        imports.appendTail(code);
        known.put(specifier, "modules[\"" + specifier + "\"]");
        script.append(module(specifier))
                .append(" = (() => {\n")
                .append(code)
                .append('\n')
                .append(given)
                .append("})();\n");
    }

    private String module(String specifier) {
        String expression = known.get(specifier);
        if (expression == null) {
            throw new IllegalStateException("A module imports " + specifier + ", which was not added");
        }
        return expression;
    }

    /** Pairs of a name and what it is called on the other side. */
    private static java.util.List<String[]> names(String list) {
        return Pattern.compile(",")
                .splitAsStream(list)
                .map(String::strip)
                .filter(name -> !name.isEmpty())
                .map(name -> {
                    String[] both = RENAMED.split(name);
                    return both.length == 2 ? both : new String[] {name, name};
                })
                .toList();
    }

    /** The script, which runs at once; it can stand in a page that is XML too. */
    String script() {
        String whole = script + "})();\n";
        if (whole.contains("]]>") || whole.contains("</script") || whole.contains("<!--")) {
            throw new IllegalStateException("A module holds what would end a script in a page");
        }
        return whole;
    }
}
