// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.export;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.BlockQuote;
import org.commonmark.node.BulletList;
import org.commonmark.node.Code;
import org.commonmark.node.CustomBlock;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.HtmlInline;
import org.commonmark.node.Image;
import org.commonmark.node.IndentedCodeBlock;
import org.commonmark.node.Link;
import org.commonmark.node.ListItem;
import org.commonmark.node.Node;
import org.commonmark.node.OrderedList;
import org.commonmark.node.Paragraph;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.Text;

import bandwright.dsl.export.pdf.PageItem;
import bandwright.dsl.view.Table;
import bandwright.kernel.notebook.NotebookCell;

/** A Markdown cell as what stands on pages: words without emphasis, the addresses of links written out, kept pictures. */
final class MarkdownItems extends AbstractVisitor {
    /** As wide as a kept picture gets, mm. */
    private static final double WIDEST = 120;

    private final Map<String, String> attachments;
    private final List<PageItem> items = new ArrayList<>();
    private String mark = "";
    private int depth;

    private MarkdownItems(Map<String, String> attachments) {
        this.attachments = attachments;
    }

    /** @param opens whether the document's own heading may be in it, which is then left out */
    static List<PageItem> of(NotebookCell cell, boolean opens) {
        Node document = MarkdownPart.PARSER.parse(cell.source());
        Node first = document.getFirstChild();
        if (opens && first instanceof org.commonmark.node.Heading heading && heading.getLevel() == 1) {
            first.unlink();
        }
        MarkdownItems visitor = new MarkdownItems(cell.attachments());
        document.accept(visitor);
        return visitor.items;
    }

    @Override
    public void visit(org.commonmark.node.Heading heading) {
        items.add(new PageItem.Heading(MarkdownPart.words(heading)));
    }

    @Override
    public void visit(Paragraph paragraph) {
        Words words = new Words(attachments);
        paragraph.accept(words);
        String text = words.text.toString().strip();
        if (!text.isEmpty()) {
            items.add(depth == 0 ? new PageItem.Paragraph(text) : new PageItem.Entry(mark, text, depth));
            // What follows in the same entry has no mark of its own.
            mark = "";
        }
        words.pictures.forEach(picture -> items.add(new PageItem.Pictures(List.of(picture), WIDEST)));
    }

    @Override
    public void visit(BulletList list) {
        entries(list, -1);
    }

    @Override
    public void visit(OrderedList list) {
        Integer start = list.getMarkerStartNumber();
        entries(list, start == null ? 1 : start);
    }

    private void entries(Node list, int start) {
        depth++;
        int number = start;
        for (Node entry = list.getFirstChild(); entry != null; entry = entry.getNext()) {
            mark = start < 0 ? "\u2022" : number + ".";
            number++;
            if (entry instanceof ListItem) {
                visitChildren(entry);
            }
        }
        depth--;
    }

    @Override
    public void visit(BlockQuote quote) {
        depth++;
        mark = "";
        visitChildren(quote);
        depth--;
    }

    @Override
    public void visit(FencedCodeBlock code) {
        items.add(new PageItem.Code("", code.getLiteral().stripTrailing()));
    }

    @Override
    public void visit(IndentedCodeBlock code) {
        items.add(new PageItem.Code("", code.getLiteral().stripTrailing()));
    }

    @Override
    public void visit(CustomBlock block) {
        if (block instanceof TableBlock) {
            items.add(new PageItem.Grid(table(block)));
        } else {
            visitChildren(block);
        }
    }

    /** The head's cells name the columns. */
    private static Table table(Node block) {
        List<List<String>> rows = new ArrayList<>();
        for (Node part = block.getFirstChild(); part != null; part = part.getNext()) {
            for (Node row = part.getFirstChild(); row != null; row = row.getNext()) {
                List<String> cells = new ArrayList<>();
                for (Node cell = row.getFirstChild(); cell != null; cell = cell.getNext()) {
                    cells.add(MarkdownPart.words(cell));
                }
                rows.add(cells);
            }
        }
        List<Table.Column> columns =
                rows.get(0).stream().map(Table.Column::words).toList();
        return new Table("", columns, rows.subList(1, rows.size()), List.of());
    }

    /** Raw HTML is shown as the text it is. */
    @Override
    public void visit(HtmlBlock html) {
        items.add(new PageItem.Paragraph(html.getLiteral()));
    }

    /** The words of a paragraph, and the pictures between them. */
    private static final class Words extends AbstractVisitor {
        private static final String SCHEME = "attachment:";

        private final Map<String, String> attachments;
        private final StringBuilder text = new StringBuilder();
        private final List<bandwright.dsl.view.Picture> pictures = new ArrayList<>();

        Words(Map<String, String> attachments) {
            this.attachments = attachments;
        }

        @Override
        public void visit(Text words) {
            text.append(words.getLiteral());
        }

        @Override
        public void visit(Code code) {
            text.append(code.getLiteral());
        }

        @Override
        public void visit(HtmlInline html) {
            text.append(html.getLiteral());
        }

        @Override
        public void visit(SoftLineBreak lineBreak) {
            text.append(' ');
        }

        @Override
        public void visit(HardLineBreak lineBreak) {
            text.append(' ');
        }

        @Override
        public void visit(Link link) {
            visitChildren(link);
            String target = link.getDestination();
            if (target.startsWith("http") && !text.toString().endsWith(target)) {
                text.append(" (").append(target).append(')');
            }
        }

        @Override
        public void visit(Image image) {
            String target = image.getDestination();
            String words = MarkdownPart.words(image);
            String data = target.startsWith(SCHEME) ? attachments.get(target.substring(SCHEME.length())) : null;
            var picture = data == null ? null : KeptPicture.of(data, words);
            if (picture == null) {
                text.append("[picture: ").append(words).append(']');
            } else {
                pictures.add(picture);
            }
        }
    }
}
