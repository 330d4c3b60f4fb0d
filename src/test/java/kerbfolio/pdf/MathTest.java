package kerbfolio.pdf;

import static kerbfolio.formula.Piece.Kind.FRACTION;
import static kerbfolio.formula.Piece.Kind.GROUP;
import static kerbfolio.formula.Piece.Kind.NUMBER;
import static kerbfolio.formula.Piece.Kind.ROOT;
import static kerbfolio.formula.Piece.Kind.SUB;
import static kerbfolio.formula.Piece.Kind.SUP;
import static kerbfolio.formula.Piece.Kind.SYMBOL;
import static kerbfolio.formula.Piece.Kind.TEXT;
import static kerbfolio.formula.Piece.Kind.UNIT;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kerbfolio.formula.Piece;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MathTest {
    private static final double SIZE = 100;
    private static final Piece U_0 = group(leaf(SYMBOL, "U"), node(SUB, leaf(NUMBER, "0")));

    @TempDir
    Path folder;

    private static Piece leaf(Piece.Kind kind, String text) {
        return new Piece(kind, text, List.of());
    }

    private static Piece node(Piece.Kind kind, Piece... parts) {
        return new Piece(kind, "", List.of(parts));
    }

    private static Piece group(Piece... parts) {
        return node(GROUP, parts);
    }

    private String filled(Piece piece) throws IOException {
        Files.writeString(
                folder.resolve("page.ftlx"),
                "<#import \"_math.ftlx\" as math>"
                        + Paper.page(
                                "<#outputformat \"undefined\"><#include \"math.css\"></#outputformat>"
                                        + "@page { size: 3000pt 1000pt } body { font-size: " + SIZE + "pt }",
                                "<p><@math.print piece=piece/></p>"));
        return Templates.from(folder).fill("page.ftlx", Map.of("piece", piece));
    }

    private String markup(Piece piece) throws IOException {
        String page = filled(piece);
        return page.substring(page.indexOf("<p>") + 3, page.indexOf("</p>"));
    }

    private Pdf printed(Piece piece) throws IOException {
        Pdf pdf = Paper.print(filled(piece), Paper.facts(), Map.of());
        assertEquals(List.of(), pdf.complaints());
        return pdf;
    }

    @Test
    void everyKindOfLeafIsSetInItsOwnWay() throws IOException {
        assertEquals(
                "<span class=\"math\" title=\"m is less than 5 kg\"><i>m</i> &lt; 5&#x202F;kg</span>",
                markup(group(leaf(SYMBOL, "m"), leaf(TEXT, " < "), leaf(NUMBER, "5"), leaf(UNIT, "kg"))));
    }

    @Test
    void aSymbolIsTiedToItsScripts() throws IOException {
        assertEquals(
                "<span class=\"math\" title=\"1 plus U sub s squared plus 2\">1 + <span class=\"tie\"><i>U</i><span class=\"sub\">s</span>"
                        + "<span class=\"sup\">2</span></span> + 2</span>",
                markup(group(
                        leaf(TEXT, "1 + "),
                        leaf(SYMBOL, "U"),
                        node(SUB, leaf(TEXT, "s")),
                        node(SUP, leaf(NUMBER, "2")),
                        leaf(TEXT, " + 2"))));
    }

    @Test
    void aFormulaIsSaidInWordsToo() throws IOException {
        Piece sum = group(leaf(SYMBOL, "a"), node(SUP, leaf(NUMBER, "2")), leaf(TEXT, " \u2212 "), leaf(SYMBOL, "b"));
        Piece flat = group(leaf(NUMBER, "3"), leaf(UNIT, "kg"));
        assertTrue(markup(group(
                        leaf(TEXT, "("),
                        leaf(TEXT, "Σ"),
                        U_0,
                        leaf(TEXT, ")·"),
                        node(FRACTION, sum, flat),
                        leaf(TEXT, " ≥ "),
                        node(ROOT, sum),
                        leaf(TEXT, "/"),
                        leaf(SYMBOL, "c"),
                        node(SUP, leaf(SYMBOL, "n"))))
                .contains(" title=\"(sum of U sub 0) times (a squared minus b) over 3 kg is at least"
                        + " the root of (a squared minus b) over c to the power n\""));
    }

    @Test
    void aDivisionInsideAnotherIsSetOnOneLineWithBracketsWhereNeeded() throws IOException {
        Piece inner = node(FRACTION, U_0, group(leaf(SYMBOL, "g"), leaf(TEXT, " + "), leaf(NUMBER, "1")));
        String text = Paper.text(printed(node(FRACTION, group(inner), group(leaf(NUMBER, "2")))));
        assertTrue(text.replaceAll("\\s", "").contains("U0/(g+1)"), text);
    }

    @Test
    void aFormulaReadsInOrder() throws IOException {
        Piece formula = group(
                leaf(SYMBOL, "t"),
                leaf(TEXT, " = "),
                node(FRACTION, U_0, group(leaf(NUMBER, "2"))),
                leaf(TEXT, " ≥ "),
                leaf(NUMBER, "1,234.5"),
                leaf(UNIT, "Ω"));
        assertEquals("t=U02≥1,234.5Ω", Paper.text(printed(formula)).replaceAll("[\\s\\u202F]", ""));
    }

    /** The expected height is the font's own: the middle of its minus sign. */
    @Test
    void theRuleOfADivisionLiesAtTheHeightOfAMinusSign() throws IOException {
        Piece below = group(leaf(SYMBOL, "y"), node(SUP, leaf(NUMBER, "2")));
        Piece formula = group(leaf(TEXT, "− "), node(FRACTION, U_0, below), leaf(TEXT, " −"));
        Pdf pdf = printed(formula);
        Bar rule = bars(pdf).get(0);
        Rectangle2D minus = glyph("−");
        assertEquals(-minus.getCenterY(), rule.middle() - baseline(pdf), 0.01 * SIZE);
    }

    /** The expected height and place are the font's own: the top right corner of its root sign, as large as printed. */
    @Test
    void theBarOfARootJoinsItsSignAndSpansTheRadicand() throws IOException {
        Pdf pdf = printed(group(node(ROOT, group(leaf(SYMBOL, "a"), leaf(TEXT, " + "), leaf(SYMBOL, "b")))));
        Bar bar = bars(pdf).get(0);
        Matcher first = TEXT_START.matcher(Paper.operators(pdf));
        assertTrue(first.find());
        double enlarged = Double.parseDouble(first.group(1)) / SIZE;
        Rectangle2D sign = glyph("√");
        assertEquals(-sign.getMinY() * enlarged, bar.top() - baseline(pdf), 0.01 * SIZE);
        assertEquals(sign.getMaxX() * enlarged, bar.left() - Double.parseDouble(first.group(2)), 0.01 * SIZE);
        assertEquals(glyph("a + b", "Italic").getMaxX(), bar.length(), 0.1 * SIZE);
    }

    private static Rectangle2D glyph(String text) throws IOException {
        return glyph(text, "Regular");
    }

    private static Rectangle2D glyph(String text, String cut) throws IOException {
        String file = "/liberation/LiberationSans-" + cut + ".ttf";
        try (InputStream ttf = MathTest.class.getResourceAsStream(file)) {
            return Font.createFont(Font.TRUETYPE_FONT, ttf)
                    .deriveFont((float) SIZE)
                    .createGlyphVector(new FontRenderContext(null, true, true), text)
                    .getVisualBounds();
        } catch (java.awt.FontFormatException e) {
            throw new IOException(e);
        }
    }

    /** A filled bar on the page [pt]. */
    private record Bar(double left, double right, double bottom, double top) {
        double middle() {
            return (bottom + top) / 2;
        }

        double length() {
            return right - left;
        }
    }

    private static final Pattern PATH =
            Pattern.compile("([-0-9.]+) ([-0-9.]+) m\\s((?:[-0-9.]+ [-0-9.]+ l\\s)+)(?:h\\s)?f");
    private static final Pattern TEXT_START = Pattern.compile("([0-9.]+) Tf\\s1 0 0 1 ([-0-9.]+) [-0-9.]+ Tm");
    private static final Pattern TEXT_MATRIX = Pattern.compile("([-0-9.]+) Tm");

    private static List<Bar> bars(Pdf pdf) {
        var bars = new ArrayList<Bar>();
        Matcher path = PATH.matcher(Paper.operators(pdf));
        while (path.find()) {
            double[] numbers = Pattern.compile("[^-0-9.]+")
                    .splitAsStream(path.group(1) + " " + path.group(2) + " " + path.group(3))
                    .mapToDouble(Double::parseDouble)
                    .toArray();
            double[] x = new double[numbers.length / 2];
            double[] y = new double[numbers.length / 2];
            for (int i = 0; i < x.length; i++) {
                x[i] = numbers[2 * i];
                y[i] = numbers[2 * i + 1];
            }
            java.util.Arrays.sort(x);
            java.util.Arrays.sort(y);
            bars.add(new Bar(x[0], x[x.length - 1], y[0], y[y.length - 1]));
        }
        return bars;
    }

    private static double baseline(Pdf pdf) {
        Matcher first = TEXT_MATRIX.matcher(Paper.operators(pdf));
        assertTrue(first.find());
        return Double.parseDouble(first.group(1));
    }
}
