// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.ring;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

import bandwright.dsl.construct.PartSection;
import bandwright.dsl.construct.Ring;
import bandwright.dsl.construct.TextRing;
import bandwright.dsl.view.image.Canvas;
import bandwright.dsl.view.image.Pixels;
import bandwright.dsl.view.image.StrokeText;
import bandwright.dsl.view.render.Camera;
import bandwright.dsl.view.render.Renderer;
import bandwright.dsl.view.render.Scene;

/** Pictures of all that a ring can be made of, on sheets to be looked at: run it, then look at {@code target/pictures}. */
final class PictureSheet {
    private static final int WIDTH = 300;
    private static final int HEIGHT = 240;
    private static final int HEAD = 26;
    private static final int ACROSS = 4;
    private static final Camera NEAR = Camera.from(30, 50);

    private static final String BAND = """
            profile bar = %s
            band shank { finger ISO 54  profile bar  metal %s }
            """;

    private static final String ROW = """
            stone-row lights on shank { stone %s  around 120 deg  spacing at least %s  sink 0.25 mm }
            """;

    private static final String SEATS = """
            cut seats for lights from shank { %s  clearance 0.01 mm }
            """;

    private static final String PINS = """
            prongs pins for lights on shank { diameter 0.55 mm  rise 0.3 mm  %s }
            """;

    private final Path folder;

    private PictureSheet(Path folder) {
        this.folder = folder;
    }

    public static void main(String[] arguments) throws IOException {
        PictureSheet sheet = new PictureSheet(Files.createDirectories(Path.of("target", "pictures")));
        sheet.write("forms", forms(), Camera.THREE_QUARTER);
        sheet.write("settings", settings(), NEAR);
        sheet.write("stones", stones(), NEAR);
        sheet.write("metals", metals(), Camera.THREE_QUARTER);
    }

    private static String band(String form, String metal) {
        return BAND.formatted(form, metal);
    }

    private static Map<String, Ring> forms() {
        Map<String, Ring> rings = new LinkedHashMap<>();
        for (String form : List.of(
                "flat(width: 5 mm, height: 1.8 mm, edge: 0.3 mm)",
                "rectangle(width: 5 mm, height: 1.8 mm)",
                "d-shape(width: 5 mm, height: 2 mm, side: 1 mm)",
                "half-round(width: 4 mm, height: 2 mm)",
                "court(width: 5 mm, height: 2.2 mm, side: 1.2 mm, inside: 0.25 mm)",
                "flat-court(width: 5 mm, height: 2 mm, inside: 0.25 mm)",
                "knife-edge(width: 5 mm, height: 2.4 mm, side: 1 mm)",
                "bevelled(width: 5 mm, height: 2 mm, bevel: 0.8 mm, side: 1.2 mm)",
                "concave(width: 5 mm, height: 2 mm, dip: 0.4 mm)")) {
            rings.put(form.substring(0, form.indexOf('(')), TextRing.of(band(form, "yellow-gold-750")));
        }
        rings.put("changing", TextRing.of("""
                profile wide = d-shape(width: 7 mm, height: 2.4 mm, side: 1.2 mm)
                profile slim = half-round(width: 3.4 mm, height: 1.6 mm)
                band shank { finger ISO 54  profile wide at 0 deg, slim at 180 deg  metal yellow-gold-750 }
                """));
        String flat = band("flat(width: 6 mm, height: 2 mm)", "white-gold-750-pd");
        rings.put("inlay, arc groove", TextRing.of(flat + """
                cut one from shank { width 1.5 mm  depth 0.8 mm  across 1.4 mm  keep inlay in red-gold-750  let-in cast }
                cut two from shank { width 1 mm  depth 0.6 mm  across -1.4 mm  around 90 deg centred 90 deg  ends round }
                """));
        rings.put(
                "pieces",
                TextRing.of(flat + "cut one from shank { width 0.8 mm  depth through  leaving low, high }\n"));
        return rings;
    }

    private static Map<String, Ring> settings() {
        String flat = band("flat(width: 4 mm, height: 2.2 mm)", "white-gold-750-pd");
        String row = ROW.formatted("round diamond 1.8 mm", "0.2 mm");
        String seats = SEATS.formatted("hole 0.9 mm  bearing 0.4 mm");
        Map<String, Ring> rings = new LinkedHashMap<>();
        rings.put("pins, reach", TextRing.of(flat + row + seats + PINS.formatted("reach 0.1 mm")));
        rings.put(
                "set-height 0.3", TextRing.of(flat + row + seats + PINS.formatted("reach 0.1 mm  set-height 0.3 mm")));
        rings.put(
                "one a gap",
                TextRing.of(flat
                        + ROW.formatted("round diamond 1.8 mm", "0.35 mm")
                        + seats
                        + PINS.formatted("per-gap 1  reach 0.1 mm")));
        rings.put(
                "channel",
                TextRing.of(flat
                        + row.replace("sink 0.25 mm", "sink 0.5 mm")
                        + SEATS.formatted(
                                "hole 0.6 mm  channel { width 90 %  notch 0.12 mm  lip 0.2 mm  floor 0.5 mm }")));
        rings.put(
                "proud",
                TextRing.of(flat + row.replace("sink 0.25 mm", "sink 0 mm") + seats + PINS.formatted("reach 0.1 mm")));
        rings.put(
                "two rows",
                TextRing.of(band("flat(width: 5 mm, height: 2.2 mm)", "white-gold-750-pd")
                        + row.replace("sink", "across -0.95 mm, 0.95 mm  staggered  sink")
                        + seats));
        rings.put(
                "on a dome",
                TextRing.of(band("d-shape(width: 5 mm, height: 2.4 mm, side: 1 mm)", "white-gold-750-pd")
                        + row.replace("sink", "across 1 mm  sink")
                        + seats
                        + PINS.formatted("reach 0.1 mm")));
        return rings;
    }

    private static Map<String, Ring> stones() {
        String flat = band("flat(width: 5 mm, height: 2.4 mm)", "platinum-950-ru");
        Map<String, Ring> rings = new LinkedHashMap<>();
        for (String stone : List.of(
                "round diamond 2 mm",
                "princess diamond 2 mm",
                "baguette diamond 1.5 mm by 2.5 mm",
                "oval diamond 1.6 mm by 2.4 mm",
                "round sapphire 2 mm",
                "round ruby 2 mm",
                "round emerald 2 mm",
                "oval amethyst 1.6 mm by 2.4 mm")) {
            rings.put(
                    stone.substring(0, stone.indexOf(' ', stone.indexOf(' ') + 1)),
                    TextRing.of(flat
                            + ROW.formatted(stone, "0.2 mm")
                            + SEATS.formatted("hole 0.6 mm")
                            + PINS.formatted("across 0.7 mm")));
        }
        return rings;
    }

    private static Map<String, Ring> metals() {
        Map<String, Ring> rings = new LinkedHashMap<>();
        for (String metal : List.of(
                "yellow-gold-750",
                "red-gold-585",
                "rose-gold-750",
                "green-gold-585",
                "white-gold-750-pd",
                "fine-gold-999",
                "yellow-gold-375",
                "palladium-950",
                "titanium-grade-2",
                "stainless-steel-316l",
                "silver-925",
                "platinum-950-ru")) {
            rings.put(metal, TextRing.of(band("d-shape(width: 5 mm, height: 2 mm, side: 1 mm)", metal)));
        }
        return rings;
    }

    private void write(String name, Map<String, Ring> rings, Camera camera) throws IOException {
        int down = (rings.size() + ACROSS - 1) / ACROSS;
        Pixels all = new Pixels(ACROSS * WIDTH, down * (HEIGHT + HEAD), 0xffffff);
        Canvas canvas = new Canvas(all);
        int at = 0;
        for (Map.Entry<String, Ring> each : rings.entrySet()) {
            Ring ring = each.getValue();
            Set<String> parts = ring.sections().stream().map(PartSection::name).collect(Collectors.toSet());
            Scene scene = RingScene.of(ring, parts);
            int left = at % ACROSS * WIDTH;
            int top = at / ACROSS * (HEIGHT + HEAD);
            all.put(new Renderer(scene).pixels(camera, WIDTH, HEIGHT), left, top + HEAD);
            StrokeText.draw(
                    canvas, each.getKey(), left + WIDTH / 2.0, top + 19.0, 16, StrokeText.Anchor.MIDDLE, 0x222222);
            at++;
        }
        Files.write(folder.resolve(name + ".png"), all.toPicture(name).png());
    }
}
