// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.export;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;

import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

import bandwright.dsl.Answer;
import bandwright.dsl.Workbench;
import bandwright.dsl.diagnostic.Severity;
import bandwright.kernel.Samples;
import bandwright.kernel.cell.CellState;
import bandwright.kernel.notebook.CellKind;
import bandwright.kernel.notebook.Notebook;
import bandwright.kernel.notebook.NotebookCell;
import bandwright.kernel.notebook.NotebookReader;
import bandwright.kernel.run.CellRun;
import bandwright.kernel.run.NotebookRun;

import static org.assertj.core.api.Assertions.assertThat;

class PageWriterTest {
    private static final String PROSE = "# Harbour light & co\n\n## A <b>part</b>\n\n<script>alert(1)</script>\n\n"
            + "![kept](attachment:a.png) ![away](https://example.com/x.png) [bad](javascript:alert(1))"
            + " [good](https://example.com)\n\n# Late\n\nline  \nbreak\n\n***\n\u0007";

    @Test
    void the_page_is_well_formed() throws Exception {
        Document document = parse(page());

        assertThat(document.getDocumentElement().getAttribute("lang")).isEqualTo("en");
        assertThat(texts(document, "h1")).containsExactly("Harbour light & co");
        assertThat(texts(document, "title")).containsExactly("Harbour light & co");
        assertThat(texts(document, "h2")).containsExactly("A <b>part</b>", "Late", "The ring in numbers");
        assertThat(document.getElementsByTagName("main").getLength()).isEqualTo(1);
        assertThat(texts(document, "nav").get(0)).contains("A part", "Late", "The ring in numbers");
    }

    @Test
    void the_page_asks_nothing_of_the_network_and_runs_nothing() throws Exception {
        String page = page();
        Document document = parse(page);

        assertThat(page).contains("content=\"default-src 'none'; img-src data:; style-src 'unsafe-inline'\"");
        for (String tag : List.of("script", "link", "iframe", "object", "embed", "base", "form")) {
            assertThat(document.getElementsByTagName(tag).getLength()).as(tag).isZero();
        }
        for (Element element : elements(document)) {
            for (int at = 0; at < element.getAttributes().getLength(); at++) {
                String name = element.getAttributes().item(at).getNodeName();
                String value = element.getAttributes().item(at).getNodeValue();
                assertThat(name).doesNotStartWith("on");
                if (name.equals("src")) {
                    assertThat(value).startsWith("data:image/");
                }
                assertThat(value).doesNotContain("javascript:");
            }
        }
        assertThat(page).doesNotContain("@import").doesNotContain("url(http");
    }

    @Test
    void a_page_with_a_model_runs_one_script_which_its_policy_names_and_stays_small() throws Exception {
        Answer.Viewed viewed = TurntableTest.viewed(Samples.RING + "view ring\n");
        String page = TurntableTest.page(viewed);
        Document document = parse(page);

        NodeList scripts = document.getElementsByTagName("script");
        assertThat(scripts.getLength()).isEqualTo(2);
        assertThat(((Element) scripts.item(0)).getAttribute("type")).isEqualTo("application/json");
        assertThat(page)
                .contains("; script-src " + TurntableScript.SOURCE + "\"")
                .contains("<script>" + TurntableScript.TEXT + "</script>")
                .contains("Permission is hereby granted, free of charge")
                .doesNotContain("http-equiv=\"refresh\"");
        int glb = Base64.getEncoder().encodeToString(viewed.turntable().glb()).length();
        assertThat(TurntableScript.TEXT.length() + TurntableScript.style().length() + glb)
                .isLessThan(1_500_000);
        assertThat(((Element) document.getElementsByTagName("img").item(0)).getAttribute("alt"))
                .startsWith("Picture of the ring");
    }

    @Test
    void ids_are_unique_and_links_inside_lead_somewhere() throws Exception {
        Set<String> ids = new HashSet<>();
        List<String> links = new ArrayList<>();
        for (Element element : elements(parse(page()))) {
            String id = element.getAttribute("id");
            assertThat(id.isEmpty() || ids.add(id))
                    .as("id " + id + " stands once")
                    .isTrue();
            if (element.getAttribute("href").startsWith("#")) {
                links.add(element.getAttribute("href").substring(1));
            }
        }
        assertThat(links).isNotEmpty();
        assertThat(ids).containsAll(links).contains("cell-1-1-a", "cell-1-2-a");
    }

    @Test
    void pictures_have_words() throws Exception {
        NodeList pictures = parse(page()).getElementsByTagName("img");

        assertThat(pictures.getLength()).isEqualTo(2);
        assertThat(((Element) pictures.item(0)).getAttribute("alt")).isEqualTo("kept");
        assertThat(((Element) pictures.item(1)).getAttribute("alt")).isEqualTo("A band with \"37\" stones: white, red");
    }

    @Test
    void pictures_have_captions_and_footnotes_stand_outside_of_what_scrolls() throws Exception {
        Document document = parse(page());

        assertThat(texts(document, "figcaption")).contains("Section at 0 deg", "A band with \"37\" stones");
        assertThat(page())
                .contains("</table>\n</div>\n<p class=\"footnote\">Density of white-gold-585-pd: a &lt;source&gt;");
        assertThat(document.getElementsByTagName("tfoot").getLength()).isZero();
    }

    @Test
    void a_notebook_without_heading_goes_by_its_title() throws Exception {
        CellRun run = run(CellKind.CODE, "x = 1 mm", List.of());
        NotebookRun notebook = new NotebookRun(empty(), List.of(run), Workbench.empty(), Samples.reportWithTrouble());

        assertThat(texts(parse(PageWriter.write(notebook, "a <ring>")), "h1")).containsExactly("a <ring>");
    }

    @Test
    void text_and_ground_keep_their_distance() {
        String css = page();
        int dark = css.indexOf("prefers-color-scheme: dark");
        for (String part : List.of(css.substring(0, dark), css.substring(dark, css.indexOf("box-sizing")))) {
            Map<String, String> colours = colours(part);
            for (String ink : List.of("ink", "quiet", "accent", "comment", "string", "number", "good", "bad")) {
                for (String ground : List.of("ground", "inset")) {
                    assertThat(contrast(colours, ink, ground))
                            .as(ink + " on " + ground)
                            .isGreaterThan(4.5);
                }
            }
            assertThat(contrast(colours, "ink", "bad-ground")).isGreaterThan(4.5);
            assertThat(contrast(colours, "bad", "bad-ground")).isGreaterThan(4.5);
            assertThat(contrast(colours, "ink", "remark-ground")).isGreaterThan(4.5);
        }
    }

    /** Contrast as WCAG 2.2 defines it, from 1 to 21. */
    private static double contrast(Map<String, String> colours, String one, String other) {
        double first = luminance(colours.getOrDefault(one, ""));
        double second = luminance(colours.getOrDefault(other, ""));
        return (Math.max(first, second) + 0.05) / (Math.min(first, second) + 0.05);
    }

    private static double luminance(String hex) {
        double[] weights = {0.2126, 0.7152, 0.0722};
        double sum = 0;
        for (int at = 0; at < 3; at++) {
            double value = Integer.parseInt(hex.substring(2 * at, 2 * at + 2), 16) / 255.0;
            sum += weights[at] * (value <= 0.04045 ? value / 12.92 : StrictMath.pow((value + 0.055) / 1.055, 2.4));
        }
        return sum;
    }

    private static Map<String, String> colours(String css) {
        Map<String, String> colours = new LinkedHashMap<>();
        Matcher matcher = Pattern.compile("--([a-z-]+): #([0-9a-f]{6});").matcher(css);
        while (matcher.find()) {
            colours.put(matcher.group(1), matcher.group(2));
        }
        return colours;
    }

    private static String page() {
        NotebookCell prose = new NotebookCell(
                "p", CellKind.MARKDOWN, PROSE, Set.of(), Map.of("a.png", "data:image/png;base64,AAA="));
        CellRun words = new CellRun(prose, 0, CellState.NOT_RUN, List.of(), List.of());
        CellRun code = run(
                CellKind.CODE,
                "title \"a < b\" # & so on\nx = 1 mm",
                List.of(
                        Samples.drawn(),
                        Samples.drawn(),
                        new Answer.Pictured(Samples.picture()),
                        new Answer.Tabled(Samples.table()),
                        new Answer.Words("", "1 < 2\n\u0000"),
                        new Answer.Required(Samples.requirement(true)),
                        new Answer.Required(Samples.requirement(false))));
        return PageWriter.write(
                new NotebookRun(empty(), List.of(words, code), Workbench.empty(), Samples.report(false)), "name");
    }

    private static CellRun run(CellKind kind, String source, List<Answer> answers) {
        NotebookCell cell = new NotebookCell("c", kind, source, Set.of(), Map.of());
        return new CellRun(
                cell,
                1,
                CellState.ERROR,
                List.of(Samples.diagnostic(Severity.ERROR), Samples.diagnostic(Severity.NOTE)),
                answers);
    }

    private static Notebook empty() {
        return (Notebook) NotebookReader.parse("it", Samples.notebook(5, "{}"));
    }

    private static Document parse(String page) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(page)));
    }

    private static List<Element> elements(Document document) {
        NodeList nodes = document.getElementsByTagName("*");
        return Stream.iterate(0, at -> at + 1)
                .limit(nodes.getLength())
                .map(at -> (Element) nodes.item(at))
                .toList();
    }

    private static List<String> texts(Document document, String tag) {
        return elements(document).stream()
                .filter(element -> element.getTagName().equals(tag))
                .map(element -> element.getTextContent())
                .toList();
    }
}
