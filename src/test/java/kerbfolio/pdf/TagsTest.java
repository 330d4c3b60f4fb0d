package kerbfolio.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.lowagie.text.pdf.PdfArray;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import kerbfolio.Sketch;
import kerbfolio.VeraPdf;
import kerbfolio.figure.Figure;
import org.junit.jupiter.api.Test;

class TagsTest {
    private static final Figure PLAN = new Sketch("plan", "Two axles.", canvas -> canvas.drawRect(5, 5, 50, 20));

    private static Pdf print(String css, String body) {
        String sized = css + "object { display: block; width: 90pt; height: 40pt }";
        return Paper.print(Paper.page(sized, body), Paper.facts(), Map.of("plan", PLAN));
    }

    private static String outline(String body) {
        return Structure.of(print("", body)).outline();
    }

    private static List<PdfDictionary> annotations(Pdf pdf) throws IOException {
        try (PdfReader reader = Paper.open(pdf)) {
            var found = new ArrayList<PdfDictionary>();
            for (int page = 1; page <= reader.getNumberOfPages(); page++) {
                PdfArray onPage = reader.getPageN(page).getAsArray(PdfName.ANNOTS);
                for (int i = 0; onPage != null && i < onPage.size(); i++) {
                    found.add(onPage.getAsDict(i));
                }
            }
            return found;
        }
    }

    @Test
    void whatThingsAreIsToldFromTheirElements() {
        assertEquals(
                "Document(Part(H1(.) P(.) H2(.) L(LI(LBody(.)) LI(LBody(. L(LI(LBody(.))))))) Sect(BlockQuote(P(.))))",
                outline("<div class='part'><h1>a</h1><p>b <b>c</b> d</p><h2>e</h2>"
                        + "<ul><li>f</li><li>g<ol><li>h</li></ol></li></ul></div>"
                        + "<section><blockquote><p>i</p></blockquote></section>"));
    }

    @Test
    void aDivisionWithWordsOfItsOwnIsAParagraph() {
        assertEquals(
                "Document(P(.) Div(P(.) P(.)) P(.))",
                outline("<div>a</div><div>b <i>c</i><p>d</p></div><unheard-of>e</unheard-of>"));
    }

    @Test
    void wordsOfTheStyleSheetAreReadWhereTheyStand() {
        String css = "li:before, i:before { content: 'x ' } p:after, b:after { content: ' y' }";
        assertEquals(
                "Document(L(LI(LBody(.))) P(. Formula(.) .) P(Formula(.) . . Formula(.) . . .))",
                Structure.of(print(
                                css,
                                "<ul><li>a</li></ul><p>b <i class='math'>c</i></p>"
                                        + "<p><em class='math'>d</em><i>e</i><em class='math'>f</em><b>g</b></p>"))
                        .outline());
    }

    @Test
    void aCellKnowsItsHeadAndARowKeepsItsEmptyCells() {
        var table = Structure.of(print(
                "",
                "<table><thead><tr><th>a</th><th colspan='2'>b</th></tr></thead>"
                        + "<tbody><tr><th>c</th><td></td><td>d</td></tr></tbody></table>"));
        assertEquals("Document(Table(THead(TR(TH(.) TH(.))) TBody(TR(TH(.) TD() TD(.)))))", table.outline());
        assertEquals(
                List.of("/Column", "/Column", "/Row"),
                table.all("TH").stream().map(head -> head.attribute("Scope")).toList());
        assertEquals("2", table.all("TH").get(1).attribute("ColSpan"));
    }

    @Test
    void aTableWithoutRowsAndAHeadingWithoutWordsLeaveTheRestInOrder() throws Exception {
        Pdf pdf = print(
                "",
                "<h1>a</h1><h2></h2><h3>b</h3><table><thead><tr><th>c</th></tr></thead><tbody></tbody></table>"
                        + "<table><tr><td>d</td></tr></table>");
        assertEquals(
                "Document(H1(.) H2(.) Table(THead(TR(TH(.))) TBody()) Table(TBody(TR(TD(.)))))",
                Structure.of(pdf).outline());
        VeraPdf.assertArchivalAndAccessible(pdf.content());
    }

    @Test
    void aHeadThatIsRepeatedOnEveryPageIsReadOnce() throws IOException {
        String rows = "<tr><td>x</td></tr>".repeat(200);
        Pdf pdf = print(
                "table { -fs-table-paginate: paginate }",
                "<table><thead><tr><th>head</th></tr></thead><tbody>" + rows + "</tbody></table>");
        try (PdfReader reader = Paper.open(pdf)) {
            String second = new String(reader.getPageContent(2), StandardCharsets.ISO_8859_1);
            assertTrue(second.matches("(?s).*/Artifact ?<<[^>]*>> ?BDC[^E]*BT.*"), second);
        }
        assertEquals(1, Structure.of(pdf).all("TH").size());
        assertEquals(200, Structure.of(pdf).all("TD").size());
    }

    /** The engine paints a figure after all words of its page. */
    @Test
    void aFigureIsReadWhereItStandsAndSaysWhatItShows() {
        var page = Structure.of(print("", "<p>a</p><object type='figure' data='plan'></object><p>b</p>"));
        assertEquals("Document(P(.) Figure(.) P(.))", page.outline());
        assertEquals("Two axles.", page.all("Figure").get(0).said(PdfName.ALT));
        assertTrue(page.all("Figure").get(0).attribute("BBox").startsWith("["));
    }

    @Test
    void mathematicsIsOneThingReadInWords() {
        String math = "<span class='math' title='a over b'><i>a</i>/<span>b</span></span>";
        var page = Structure.of(print("", "<p>so " + math + " it is</p>"));
        assertEquals("Document(P(. Formula(.) .))", page.outline());
        assertEquals("a over b", page.all("Formula").get(0).said(PdfName.ALT));
        assertEquals(
                "a / b",
                Structure.of(print("", "<p><span class='math'>a / b</span></p>"))
                        .all("Formula")
                        .get(0)
                        .said(PdfName.ALT));
    }

    @Test
    void aSignAndAShortWordAreSpelledOut() {
        var page = Structure.of(print("", "<p>☑ done, <abbr title='state of charge'>SoC</abbr></p>"));
        assertEquals("box ticked", page.all("Span").get(0).said(PdfName.ALT));
        assertEquals("state of charge", page.all("Span").get(1).said(PdfName.E));
    }

    @Test
    void aLinkHasOnePlaceToPressOnEachLineAndSaysItsWords() throws IOException {
        Pdf pdf = print(
                "p { width: 60pt }", "<p>see <a href='#x'>the <b>second</b> thing of all</a></p><h1 id='x'>x</h1>");
        assertEquals("Document(P(. Link(. . . @ @ @)) H1(.))", Structure.of(pdf).outline());
        assertEquals(
                Collections.nCopies(3, "the second thing of all"),
                annotations(pdf).stream()
                        .map(link -> link.getAsString(PdfName.CONTENTS).toUnicodeString())
                        .toList());
    }

    @Test
    void aLinkThatLeadsNowhereIsPlainTextAndReported() throws IOException {
        Pdf pdf = print("", "<p><a href='#nowhere'>x</a></p>");
        assertEquals("Document(P(.))", Structure.of(pdf).outline());
        assertEquals(List.of(), annotations(pdf));
        assertEquals(List.of("a link leads to #nowhere, which is not in the document"), pdf.complaints());
    }

    @Test
    void aListOfContentsIsOneWithItsPageNumbersButNotItsDots() {
        assertEquals(
                "Document(TOC(TOCI(Reference(Link(. . @)))) H1(.))",
                Structure.of(print(
                                "a:after { content: leader('.') target-counter(attr(href), page) }",
                                "<ul class='contents'><li><a href='#x'>x</a></li></ul><h1 id='x'>x</h1>"))
                        .outline());
    }

    @Test
    void runningHeadsAndFeetAreNoPartOfTheText() {
        Pdf pdf = print(
                ".head { position: running(head) } @page { @top-left { content: element(head) }"
                        + " @bottom-left { content: counter(page) } }",
                "<div class='head'><p>head</p></div><p>a</p>");
        assertEquals("Document(P(.))", Structure.of(pdf).outline());
        String operators = Paper.operators(pdf);
        assertTrue(operators.contains("/Subtype/Header"), operators);
        assertTrue(operators.contains("/Subtype/Footer"), operators);
    }

    @Test
    void aLevelOfHeadingsThatIsLeftOutIsClosedAndReported() {
        Pdf pdf = print("", "<h1>a</h1><h3>b</h3><h2>c</h2><h3>d</h3>");
        assertEquals("Document(H1(.) H2(.) H2(.) H3(.))", Structure.of(pdf).outline());
        assertEquals(List.of("the heading \"b\" is an h3 with no h2 above it"), pdf.complaints());
    }

    /** A shop's own templates may hold anything. */
    @Test
    void oddMarkupIsStillAnAccessibleDocument() throws Exception {
        Pdf pdf = print(
                "b { display: block } .up { position: absolute; top: 0 } .out { float: right }"
                        + "li:before { content: 'x ' } h5:after { content: ' y' }",
                "bare <b>block</b><h5>h5 <span>in</span></h5><ul>bare<p>p</p><ul><li>l</li></ul></ul><ol><li>1</li></ol>"
                        + "<li>stray</li><td>stray</td><tr><td>stray</td></tr><thead><tr><th>stray</th></tr></thead>"
                        + "<table>bare<tr><td><table><tr><th>in</th></tr></table></td></tr><caption>c</caption></table>"
                        + "<p>a<div>b</div>c <a>no</a><a href='#n'><p>block</p></a></p><p id='n' class='up'>up ☐</p>"
                        + "<p class='out'>out</p><dl><dt>t</dt><dd>d</dd></dl><hr/><table></table><ul></ul><p></p>"
                        + "<span class='math'><object type='figure' data='plan'></object></span>"
                        + "<nav class='contents'>x<ul><li>y</li></ul></nav><p title=''>z</p><i title=''>w</i>");
        VeraPdf.assertArchivalAndAccessible(pdf.content());
    }
}
