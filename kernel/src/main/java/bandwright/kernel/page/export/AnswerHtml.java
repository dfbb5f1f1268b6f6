// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.export;

import java.util.Base64;
import java.util.regex.Pattern;

import bandwright.dsl.Answer;
import bandwright.dsl.view.Picture;
import bandwright.kernel.display.Displays;

/** What the language answered, as HTML. */
final class AnswerHtml {
    private static final Pattern PROLOGUE = Pattern.compile("\\A\\s*(?:<\\?xml[^>]*>|<!DOCTYPE[^>]*>|\\s)*");
    private static final Pattern ID = Pattern.compile("(\\bid=\"|\\bhref=\"#|url\\(#)([^\")]+)");

    private AnswerHtml() {}

    /**
     * One answer.
     *
     * @param prefix sets the ids of a drawing apart from those of all others on the page
     */
    static String of(Answer answer, String prefix) {
        if (answer instanceof Answer.Drawn drawn) {
            return drawing(drawn, prefix);
        }
        if (answer instanceof Answer.Pictured pictured) {
            return "<figure class=\"picture\">\n<div class=\"paper\">" + picture(pictured.picture())
                    + "</div>\n<figcaption>"
                    + Html.escape(caption(pictured.picture().alternativeText())) + "</figcaption>\n</figure>\n";
        }
        if (answer instanceof Answer.Viewed viewed) {
            return turntable(viewed);
        }
        if (answer instanceof Answer.Tabled tabled) {
            return TableHtml.of(tabled.table());
        }
        if (answer instanceof Answer.Explained explained) {
            return "<div class=\"explained\">\n" + explained.html() + "</div>\n";
        }
        if (answer instanceof Answer.Varied varied) {
            return TableHtml.of(varied.shown());
        }
        if (answer instanceof Answer.Required required) {
            String state = required.requirement().result().replace(' ', '-');
            return "<p class=\"" + state + "\">" + Html.escape(answer.plainText()) + "</p>\n";
        }
        return "<pre class=\"said\">" + Html.escape(answer.plainText().stripTrailing()) + "</pre>\n";
    }

    /** The picture; the script puts the model in its place, from what is told beside it. */
    private static String turntable(Answer.Viewed viewed) {
        String told = viewed.turntable().json();
        return "<figure class=\"picture turntable\">\n<div class=\"paper\">" + picture(viewed.picture())
                + "</div>\n<script type=\"application/json\">" + told.substring(0, told.length() - 1) + ",\"glb\":\""
                + Base64.getEncoder().encodeToString(viewed.turntable().glb())
                + "\"}</script>\n<figcaption>"
                + Html.escape(caption(viewed.turntable().summary()))
                + "</figcaption>\n</figure>\n";
    }

    private static String drawing(Answer.Drawn drawn, String prefix) {
        String svg = PROLOGUE.matcher(drawn.svg()).replaceFirst("");
        String own = ID.matcher(svg).replaceAll("$1" + prefix + "$2");
        return "<figure class=\"drawing\">\n" + Html.frame(drawn.title(), own.stripTrailing() + "\n") + "<figcaption>"
                + Html.escape(drawn.title()) + "</figcaption>\n</figure>\n";
    }

    /** What is to be seen; how it looks, after the colon, is for those who do not see it. */
    static String caption(String words) {
        int colon = words.indexOf(':');
        return colon > 0 ? words.substring(0, colon) : words;
    }

    private static String picture(Picture picture) {
        return "<img width=\"" + picture.width() + "\" height=\"" + picture.height() + "\" alt=\""
                + Html.escape(picture.alternativeText()) + "\" src=\"data:image/png;base64,"
                + Displays.base64(picture) + "\" />";
    }
}
