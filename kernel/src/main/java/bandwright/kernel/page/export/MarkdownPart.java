// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.export;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

import org.commonmark.Extension;
import org.commonmark.ext.gfm.tables.TableHead;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Code;
import org.commonmark.node.CustomNode;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.Image;
import org.commonmark.node.Node;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.NodeRenderer;
import org.commonmark.renderer.html.HtmlNodeRendererContext;
import org.commonmark.renderer.html.HtmlRenderer;

import bandwright.kernel.notebook.NotebookCell;

/**
 * A Markdown cell as HTML. Raw HTML in it shows as text, links to anything but the usual addresses lose their target, and
 * pictures show only if they are kept in the cell itself: the page asks nothing of the network.
 *
 * @param html of the cell, without the page's own heading if the cell opened with it
 * @param title the text of a first-level heading the cell opened with, or empty
 * @param headings the others
 */
record MarkdownPart(String html, String title, List<Heading> headings) {
    private static final List<Extension> EXTENSIONS = List.of(TablesExtension.create());

    /** Markdown as Jupyter shows it, tables included. */
    static final Parser PARSER = Parser.builder().extensions(EXTENSIONS).build();

    private static final String TABLE = "<table>";
    private static final String TABLE_END = "</table>";

    MarkdownPart {
        headings = List.copyOf(headings);
    }

    /**
     * Renders a cell.
     *
     * @param number of the cell in the notebook, for ids
     * @param opens whether the page's own heading may be in it
     */
    static MarkdownPart of(NotebookCell cell, int number, boolean opens) {
        Node document = PARSER.parse(cell.source());
        String title = "";
        if (opens && document.getFirstChild() instanceof org.commonmark.node.Heading first && first.getLevel() == 1) {
            title = words(first);
            first.unlink();
        }
        HeadingCollector collector = new HeadingCollector(number);
        document.accept(collector);
        HtmlRenderer renderer = HtmlRenderer.builder()
                .extensions(EXTENSIONS)
                .escapeHtml(true)
                .sanitizeUrls(true)
                .attributeProviderFactory(context -> (node, tag, attributes) -> {
                    String id = collector.ids.get(node);
                    if (id != null) {
                        attributes.put("id", id);
                    }
                    if (tag.equals("a")) {
                        attributes.put("rel", "noopener noreferrer");
                    }
                })
                .nodeRendererFactory(context -> new KeptPictures(context, cell.attachments()))
                .build();
        return new MarkdownPart(framed(renderer.render(document), collector.tables), title, collector.headings);
    }

    /**
     * A table wider than a telephone scrolls by itself. The tags are the renderer's own: what a cell writes is escaped.
     *
     * @param names of the tables, in their order
     */
    private static String framed(String html, List<String> names) {
        StringBuilder framed = new StringBuilder();
        int from = 0;
        for (String name : names) {
            int at = html.indexOf(TABLE, from);
            int end = html.indexOf(TABLE_END, at) + TABLE_END.length();
            framed.append(html, from, at)
                    .append("<div class=\"tabled\">")
                    .append(Html.frame(name, html.substring(at, end)))
                    .append("</div>");
            from = end;
        }
        return framed.append(html.substring(from)).toString();
    }

    static String words(Node node) {
        StringBuilder words = new StringBuilder();
        node.accept(new AbstractVisitor() {
            @Override
            public void visit(Text text) {
                words.append(text.getLiteral());
            }

            @Override
            public void visit(Code code) {
                words.append(code.getLiteral());
            }

            @Override
            public void visit(SoftLineBreak lineBreak) {
                words.append(' ');
            }

            @Override
            public void visit(HardLineBreak lineBreak) {
                words.append(' ');
            }
        });
        return words.toString();
    }

    /** Gives headings their ids, takes further first-level ones down a level, for a page has one, and names tables. */
    private static final class HeadingCollector extends AbstractVisitor {
        private final int cellNumber;
        private final List<Heading> headings = new ArrayList<>();
        private final IdentityHashMap<Node, String> ids = new IdentityHashMap<>();
        private final List<String> tables = new ArrayList<>();

        HeadingCollector(int cellNumber) {
            this.cellNumber = cellNumber;
        }

        /** A table goes by the words of its head. */
        @Override
        public void visit(CustomNode node) {
            if (node instanceof TableHead head) {
                List<String> columns = new ArrayList<>();
                for (Node cell = head.getFirstChild().getFirstChild(); cell != null; cell = cell.getNext()) {
                    columns.add(words(cell));
                }
                columns.removeIf(String::isBlank);
                tables.add("Table: " + String.join(", ", columns));
            }
        }

        @Override
        public void visit(org.commonmark.node.Heading heading) {
            heading.setLevel(Math.max(2, heading.getLevel()));
            String id = "heading-" + cellNumber + "-" + (headings.size() + 1);
            ids.put(heading, id);
            headings.add(new Heading(heading.getLevel(), id, words(heading)));
        }
    }

    /** Pictures kept in the cell; any other leaves its words. */
    private record KeptPictures(HtmlNodeRendererContext context, Map<String, String> attachments)
            implements NodeRenderer {
        private static final String SCHEME = "attachment:";

        @Override
        public Set<Class<? extends Node>> getNodeTypes() {
            return Set.of(Image.class);
        }

        @Override
        public void render(Node node) {
            String target = ((Image) node).getDestination();
            String data = target.startsWith(SCHEME) ? attachments.get(target.substring(SCHEME.length())) : null;
            if (data == null) {
                context.getWriter().text("[picture: " + words(node) + "]");
            } else {
                context.getWriter().tag("img", new TreeMap<>(Map.of("src", data, "alt", words(node))), true);
            }
        }
    }
}
