// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.export.DxfReading;
import bandwright.dsl.export.ExportFile;
import bandwright.dsl.export.Tool;
import bandwright.dsl.golden.GoldenFiles;
import bandwright.dsl.source.SourceText;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

/** Files, read by programs of others and by readers that know nothing of our writers. */
class ExportTest {
    private static final Workbench RING = ring();

    @TempDir
    private Path folder;

    private static Workbench ring() {
        String text = GoldenFiles.cases("workbench").stream()
                .filter(input -> input.name().equals("harbour-light"))
                .findFirst()
                .orElseThrow()
                .text();
        return Workbench.empty().define("ring", new SourceText("ring", text)).workbench();
    }

    private static List<ExportFile> files(String export) {
        return exported(RING, export).files();
    }

    private static Answer.Exported exported(Workbench workbench, String export) {
        Outcome outcome = workbench.run("export", new SourceText("export", export));
        assertThat(outcome.diagnostics()).isEmpty();
        return (Answer.Exported) outcome.answers().get(0);
    }

    private static Map<String, Double> volumes() {
        Map<String, Double> volumes = new LinkedHashMap<>();
        RING.report().parts().forEach(part -> volumes.put(part.name(), part.volumeMm3()));
        return volumes;
    }

    // --- 3MF ---

    @Test
    void lib3mf_reads_a_3mf_without_a_warning_and_finds_every_part_sound() throws Exception {
        Path reader = Tool.reader3mf(folder);
        for (String how : List.of("", " { laid out spacing 3 mm }", " { shrinkage 1.6 %  stock 0.1 mm outside }")) {
            String said = Tool.run(List.of(reader.toString(), write("export \"ring.3mf\"" + how)));
            assertThat(said).startsWith("warnings 0\n").contains("metadata Title=Harbour light\n");
            assertThat(said).contains(":fingerprint=" + RING.report().fingerprint());
            List<String> objects =
                    said.lines().filter(line -> line.startsWith("object ")).toList();
            assertThat(objects).hasSize(3).allMatch(line -> line.contains("manifold=1 valid=1"));
            assertThat(objects)
                    .anyMatch(line -> line.startsWith("object stripe ") && line.endsWith("metal=red-gold-585"));
            assertThat(said).endsWith(how.contains("laid out") ? "items 3\n" : "items 1\n");
            if (!how.contains("shrinkage")) {
                volumes()
                        .forEach((part, volume) -> assertThat(objects).anySatisfy(line -> {
                            assertThat(line).startsWith("object " + part + " ");
                            assertThat(Double.parseDouble(line.replaceAll(".*volume=([0-9.]+).*", "$1")))
                                    .isCloseTo(volume, withinPercentage(0.01));
                        }));
            }
        }
    }

    private String write(String export) throws IOException {
        ExportFile file = files(export).get(0);
        Path path = folder.resolve(file.name());
        Files.write(path, file.bytes());
        return path.toString();
    }

    private static Map<String, byte[]> unzipped(byte[] zip) throws IOException {
        Map<String, byte[]> entries = new LinkedHashMap<>();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                entries.put(entry.getName(), in.readAllBytes());
            }
        }
        return entries;
    }

    private static Document model(String export) throws Exception {
        byte[] xml = unzipped(files(export).get(0).bytes()).get("3D/3dmodel.model");
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new ByteArrayInputStream(xml));
    }

    private static List<Element> elements(Element within, String name) {
        NodeList found = within.getElementsByTagName(name);
        return java.util.stream.IntStream.range(0, found.getLength())
                .mapToObj(i -> (Element) found.item(i))
                .toList();
    }

    private static double volume(Element object) {
        double[][] at = elements(object, "vertex").stream()
                .map(vertex -> new double[] {number(vertex, "x"), number(vertex, "y"), number(vertex, "z")})
                .toArray(double[][]::new);
        double sum = 0;
        for (Element triangle : elements(object, "triangle")) {
            double[] a = at[(int) number(triangle, "v1")];
            double[] b = at[(int) number(triangle, "v2")];
            double[] c = at[(int) number(triangle, "v3")];
            sum += a[0] * (b[1] * c[2] - b[2] * c[1])
                    + a[1] * (b[2] * c[0] - b[0] * c[2])
                    + a[2] * (b[0] * c[1] - b[1] * c[0]);
        }
        return sum / 6;
    }

    private static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }

    @Test
    void a_pattern_is_larger_by_what_shrinks() throws Exception {
        double plain = volume(object(model("export \"a.3mf\" { as cast  parts shank }"), "shank"));
        double even = volume(object(model("export \"a.3mf\" { shrinkage 1.6 %  parts shank }"), "shank"));
        assertThat(even / plain).isCloseTo(1 / (0.984 * 0.984 * 0.984), within(1e-5));
        double across = volume(
                object(model("export \"a.3mf\" { shrinkage around 0 % across 2 % out 0 %  parts shank }"), "shank"));
        assertThat(across / plain).isCloseTo(1 / 0.98, within(1e-5));
    }

    private static Element object(Document model, String name) {
        return elements(model.getDocumentElement(), "object").stream()
                .filter(object -> object.getAttribute("name").equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void a_model_says_its_stage_and_holds_a_picture_and_a_material_for_each_metal() throws Exception {
        byte[] zip = files("export \"a.3mf\" { shrinkage 1.6 %  stock 0.1 mm outside, 0.05 mm inside }")
                .get(0)
                .bytes();
        Map<String, byte[]> entries = unzipped(zip);
        String xml = new String(entries.getOrDefault("3D/3dmodel.model", new byte[0]), StandardCharsets.UTF_8);
        assertThat(xml)
                .contains("unit=\"millimeter\"")
                .contains("as cast, without what is cut at the bench")
                .contains("enlarged for shrinkage of 1.6 %, every length by 1/(1 - 0.016)")
                .contains("stock to file, 0.1 mm outside and 0.05 mm inside")
                .contains("<base name=\"white-gold-585-pd\"")
                .contains("<base name=\"red-gold-585\"");
        assertThat(elements(model("export \"a.3mf\"").getDocumentElement(), "base"))
                .hasSize(2);
        var picture =
                ImageIO.read(new ByteArrayInputStream(entries.getOrDefault("Metadata/thumbnail.png", new byte[0])));
        assertThat(picture.getWidth()).isEqualTo(256);
    }

    @Test
    void parts_laid_out_keep_their_distance_and_none_lies_below_the_plate() throws Exception {
        Document model = model("export \"a.3mf\" { laid out spacing 3 mm }");
        List<double[]> boxes = elements(model.getDocumentElement(), "item").stream()
                .map(item -> box(model, item))
                .toList();
        assertThat(boxes).hasSize(3).allSatisfy(box -> {
            assertThat(box[0]).isGreaterThanOrEqualTo(-1e-9);
            assertThat(box[1]).isGreaterThanOrEqualTo(-1e-9);
            assertThat(box[4]).isCloseTo(0, within(1e-9));
        });
        for (int i = 0; i < boxes.size(); i++) {
            for (int k = i + 1; k < boxes.size(); k++) {
                double[] a = boxes.get(i);
                double[] b = boxes.get(k);
                double alongX = Math.max(b[0] - a[2], a[0] - b[2]);
                double alongY = Math.max(b[1] - a[3], a[1] - b[3]);
                assertThat(Math.max(alongX, alongY)).isGreaterThan(3 - 1e-6);
            }
        }
    }

    /** Least and largest x and y, and least z, of what is built. */
    private static double[] box(Document model, Element item) {
        String[] moved = item.getAttribute("transform").split(" ", -1);
        Element object = elements(model.getDocumentElement(), "object").stream()
                .filter(each -> each.getAttribute("id").equals(item.getAttribute("objectid")))
                .findFirst()
                .orElseThrow();
        double[] box = {1e9, 1e9, -1e9, -1e9, 1e9};
        for (Element vertex : elements(object, "vertex")) {
            double x = number(vertex, "x") + Double.parseDouble(moved[9]);
            double y = number(vertex, "y") + Double.parseDouble(moved[10]);
            box[0] = Math.min(box[0], x);
            box[1] = Math.min(box[1], y);
            box[2] = Math.max(box[2], x);
            box[3] = Math.max(box[3], y);
            box[4] = Math.min(box[4], number(vertex, "z") + Double.parseDouble(moved[11]));
        }
        return box;
    }

    // --- STL ---

    @Test
    void admesh_finds_nothing_to_mend_in_an_stl() throws Exception {
        Tool.need("admesh", "--version");
        Map<String, Double> volumes = volumes();
        List<ExportFile> files = files("export \"ring.stl\"");
        assertThat(files.stream().map(ExportFile::name))
                .containsExactlyInAnyOrder("ring-shank.stl", "ring-collar.stl", "ring-stripe.stl");
        for (ExportFile file : files) {
            String part = file.name().replaceAll("ring-(.*)\\.stl", "$1");
            Files.write(folder.resolve(file.name()), file.bytes());
            String said = Tool.run(
                    List.of("admesh", "--no-check", folder.resolve(file.name()).toString()));
            said = said.isEmpty()
                    ? said
                    : Tool.run(List.of("admesh", folder.resolve(file.name()).toString()));
            assertThat(figure(said, "Number of parts")).isEqualTo(1);
            assertThat(figure(said, "Degenerate facets")).isZero();
            assertThat(figure(said, "Facets with 1 disconnected edge")).isZero();
            assertThat(figure(said, "Facets with 2 disconnected edges")).isZero();
            assertThat(figure(said, "Facets with 3 disconnected edges")).isZero();
            assertThat(figure(said, "Total disconnected facets")).isZero();
            for (String mended : List.of(
                    "Edges fixed",
                    "Facets removed",
                    "Facets added",
                    "Facets reversed",
                    "Backwards edges",
                    "Normals fixed")) {
                assertThat(figure(said, mended)).as(mended).isZero();
            }
            assertThat(figure(said, "Volume")).isCloseTo(volumes.getOrDefault(part, 0.0), withinPercentage(0.01));
        }
    }

    private static double figure(String said, String name) {
        Matcher figure =
                Pattern.compile(Pattern.quote(name) + "\\s*:\\s*(-?[0-9.]+)").matcher(said);
        assertThat(figure.find()).as(name + " in " + said).isTrue();
        return Double.parseDouble(figure.group(1));
    }

    @Test
    void an_stl_of_one_part_has_the_name_as_it_is_and_the_fingerprint_in_its_header() {
        List<ExportFile> files = files("export \"only.STL\" { parts collar }");
        assertThat(files).hasSize(1);
        assertThat(files.get(0).name()).isEqualTo("only.STL");
        ByteBuffer file = ByteBuffer.wrap(files.get(0).bytes()).order(ByteOrder.LITTLE_ENDIAN);
        byte[] header = new byte[80];
        file.get(header);
        assertThat(new String(header, StandardCharsets.US_ASCII))
                .startsWith("Bandwright, mm, fingerprint " + RING.report().fingerprint());
        assertThat(file.getInt()).isEqualTo((files.get(0).bytes().length - 84) / 50);
    }

    // --- DXF and SVG ---

    @Test
    void a_section_in_dxf_measures_what_the_ring_does() {
        DxfReading dxf = new DxfReading(files("export \"cut.dxf\" { section of ring at 4.5 deg }")
                .get(0)
                .bytes());
        assertThat(dxf.layers()).contains("part_shank", "part_stripe", "part_collar", "finger", "dimensions");
        // Half-way between two stones nothing is cut: the three sections fill the profile, whose area is known.
        double profile = 4.6 * 1.25 + segment(4.6, 0.65);
        double cut = dxf.area("part_shank") + dxf.area("part_stripe") + dxf.area("part_collar");
        assertThat(cut).isBetween(0.9 * profile, 1.1 * profile);
        DxfReading plain = new DxfReading(exported(
                        Workbench.empty().define("b", new SourceText("b", """
                                        profile dome = d-shape(width: 4.6 mm, height: 1.9 mm, side: 1.25 mm)
                                        band shank { finger ISO 57  profile dome  metal silver-925 }
                                        """)).workbench(), "export \"cut.dxf\"")
                .files()
                .get(0)
                .bytes());
        assertThat(plain.kinds("part_shank")).containsEntry("ARC", 1).containsEntry("LINE", 3);
        assertThat(plain.area("part_shank")).isCloseTo(profile, within(1e-4));
    }

    /** Of a circle, over a chord. */
    private static double segment(double chord, double rise) {
        double radius = (chord * chord / 4 + rise * rise) / (2 * rise);
        double angle = 2 * StrictMath.asin(chord / 2 / radius);
        return radius * radius / 2 * (angle - StrictMath.sin(angle));
    }

    @Test
    void a_layout_in_dxf_has_a_circle_for_each_stone_in_its_true_size() {
        DxfReading dxf = new DxfReading(
                files("export \"marks.dxf\" { layout of lights }").get(0).bytes());
        int count = RING.report().stoneRows().get(0).count();
        assertThat(dxf.kinds("stones")).containsExactly(Map.entry("CIRCLE", count));
        assertThat(dxf.area("stones")).isCloseTo(count * StrictMath.PI * 0.75 * 0.75, within(1e-3));
        assertThat(dxf.kinds("pins")).containsExactly(Map.entry("CIRCLE", 2 * count));
        assertThat(dxf.kinds("stone_numbers")).containsExactly(Map.entry("TEXT", count));
    }

    @Test
    void views_in_dxf_have_three_views_in_their_true_size() {
        Workbench tube =
                Workbench.empty().define("ring", new SourceText("ring", """
                        profile bar = rectangle(width: 4 mm, height: 2 mm)
                        band shank { finger DE 18  profile bar  metal silver-925 }
                        """)).workbench();
        DxfReading dxf = new DxfReading(
                exported(tube, "export \"views.dxf\" { views }").files().get(0).bytes());

        assertThat(dxf.kinds("front_dimensions")).containsEntry("TEXT", 3).containsEntry("LINE", 3);
        assertThat(dxf.kinds("side_dimensions")).containsEntry("TEXT", 1);
        assertThat(dxf.kinds("plan_metal")).isNotEmpty();
        assertThat(dxf.kinds("front_stones")).isEmpty();
        assertThat(new String(
                        files("export \"views.svg\" { views of shank, stripe }")
                                .get(0)
                                .bytes(),
                        java.nio.charset.StandardCharsets.UTF_8))
                .contains("id=\"front_metal\"", "id=\"side_stones\"", "first-angle projection", "width 4.6 mm");
    }

    @Test
    void an_svg_is_in_true_size_with_a_group_for_each_meaning() throws Exception {
        byte[] bytes = files("export \"marks.svg\" { layout of lights }").get(0).bytes();
        Document svg = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new ByteArrayInputStream(bytes));
        Element root = svg.getDocumentElement();
        assertThat(root.getAttribute("width")).endsWith("mm");
        String[] view = root.getAttribute("viewBox").split(" ", -1);
        assertThat(root.getAttribute("width")).isEqualTo(view[2] + "mm");
        assertThat(elements(root, "g").stream().map(group -> group.getAttribute("id")))
                .contains("part_shank", "part_stripe", "stones", "pins", "dimensions");
    }

    // --- CSV ---

    @Test
    void tables_are_the_ones_that_are_shown() {
        assertThat(csv("export \"a.csv\"")).startsWith("part,metal,").contains("red-gold-585");
        assertThat(csv("export \"a.csv\" { stones }")).contains("lights");
        assertThat(csv("export \"a.csv\" { casting  shrinkage 1.6 % }")).contains("metal to charge");
        assertThat(csv("export \"a.csv\" { quote { metal 60 EUR/g } }")).contains("EUR");
        assertThat(
                        csv(
                                "export \"a.csv\" {\n vary breadth over 4 mm, 5 mm {\n weight(shank)\n count(lights)\n }\n replace\n}"))
                .startsWith("breadth (mm),weight(shank) (g),count(lights)\n4,");
    }

    private static String csv(String export) {
        return new String(files(export).get(0).bytes(), StandardCharsets.UTF_8);
    }

    // --- all ---

    @Test
    void a_second_run_gives_the_same_bytes() {
        Workbench again = ring();
        for (String export : List.of("export \"a.3mf\"", "export \"a.stl\"", "export \"a.dxf\"")) {
            List<ExportFile> first = files(export);
            List<ExportFile> second = exported(again, export).files();
            for (int i = 0; i < first.size(); i++) {
                assertThat(second.get(i).bytes()).isEqualTo(first.get(i).bytes());
            }
        }
    }

    @Test
    void names_that_lead_elsewhere_or_nowhere_are_refused() {
        for (String name : List.of(
                "../a.stl",
                "/tmp/a.stl",
                "C:/a.stl",
                "a/../b.stl",
                "a\\b.stl",
                "aux.stl",
                "sub/NUL.stl",
                "a?.stl",
                ".stl",
                " a.stl",
                "a/ /b.stl",
                "a\u202Eb.stl",
                "a\u200Bb.stl",
                "x".repeat(300) + ".stl")) {
            Outcome outcome = RING.run("export", new SourceText("export", "export \"" + name + "\""));
            assertThat(outcome.diagnostics().stream().map(Diagnostic::code))
                    .as(name)
                    .containsExactly("file-name");
            assertThat(outcome.workbench()).isSameAs(RING);
        }
        assertThat(files("export \"Škoda 環.csv\"").get(0).name()).isEqualTo("Škoda 環.csv");
    }
}
