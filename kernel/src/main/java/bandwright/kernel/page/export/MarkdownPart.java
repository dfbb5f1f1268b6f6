// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.export;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Code;
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
    private static final Parser PARSER = Parser.builder().build();

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
        return new MarkdownPart(renderer.render(document), title, collector.headings);
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

    /** Gives headings their ids, and takes further first-level ones down a level: a page has one. */
    private static final class HeadingCollector extends AbstractVisitor {
        private final int cellNumber;
        private final List<Heading> headings = new ArrayList<>();
        private final IdentityHashMap<Node, String> ids = new IdentityHashMap<>();

        HeadingCollector(int cellNumber) {
            this.cellNumber = cellNumber;
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
