package kerbfolio.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfReader;
import com.lowagie.text.pdf.SimpleBookmark;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RendererTest {
    private static String refusal(String css, String body) {
        return assertThrows(TemplateComplaint.class, () -> Paper.print(css, body))
                .getMessage();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "file:///etc/passwd",
                "http://127.0.0.1:9/x",
                "https://127.0.0.1:9/x",
                "jar:file:///x.jar!/y",
                "classpath:/x"
            })
    void aStyleSheetFetchesNothingAndTheAddressIsNamed(String address) {
        for (String css : List.of(
                "body { background-image: url(%s) }",
                "p { background: url('%s') no-repeat }",
                "@page { background-image: url(%s) }",
                "li { list-style-image: url(%s) }",
                "@import url(%s);",
                "@font-face { font-family: X; src: url(%s) }")) {
            String refusal = refusal(css.formatted(address), "<p>x</p><ul><li>y</li></ul>");
            assertTrue(refusal.contains(address), css + " -> " + refusal);
        }
    }

    @Test
    void aStyleAttributeFetchesNothing() {
        assertTrue(refusal("", "<p style='background-image: url(file:///etc/passwd)'>x</p>")
                .contains("file:///etc/passwd"));
    }

    @Test
    void aStyleSheetInstructionFetchesNothing() {
        String page = "<?xml-stylesheet href=\"file:///etc/passwd\" type=\"text/css\"?>" + Paper.page("", "<p>x</p>");
        var complaint = assertThrows(TemplateComplaint.class, () -> Paper.print(page, Paper.facts(), Map.of()));
        assertTrue(complaint.getMessage().contains("file:///etc/passwd"), complaint.getMessage());
    }

    @Test
    void anEmbeddedPictureIsNotTakenFromAnAddressEither() {
        assertTrue(refusal("body { background-image: url(data:image/png;base64,AAAA) }", "<p>x</p>")
                .contains("data:image/png"));
    }

    @Test
    void signsTheTextFaceLacksComeOutOfThePdfAgain() {
        Pdf pdf = Paper.print("<p>R ≥ 500 Ω ☐ open ☑ done ⚠ live ⚡ ✓ 10⁻² ½ µF → <b>☒ bold ☐</b> <i>☐</i></p>");
        String text = Paper.text(pdf);
        for (String sign : List.of("Ω", "≥", "☐ open", "☑ done", "⚠ live", "⚡", "✓", "⁻", "½", "µ", "→", "☒ bold")) {
            assertTrue(text.contains(sign), sign + " not in " + text);
        }
        assertEquals(List.of(), pdf.complaints());
    }

    @Test
    void aCharacterNoFaceHasIsPrintedAsItsCodeAndReported() {
        Pdf pdf = Paper.print("<p>ok 中 end</p><p>again 中</p>");
        assertTrue(Paper.text(pdf).contains("ok [U+4E2D] end"));
        assertEquals(
                List.of("no face sets U+4E2D (CJK UNIFIED IDEOGRAPHS 4E2D) in \"ok 中 end\"; printed as [U+4E2D]"),
                pdf.complaints());
    }

    @Test
    void aHiddenDirectionSignIsLeftOutAndReported() {
        Pdf pdf = Paper.print("<p>fuse \u202E500 A\u202C</p>");
        assertTrue(Paper.text(pdf).contains("fuse 500 A"));
        assertEquals(
                List.of(
                        "U+202E, which turns the direction of text, was left out of \"fuse \uFFFD500 A\uFFFD\"",
                        "U+202C, which turns the direction of text, was left out of \"fuse \uFFFD500 A\uFFFD\""),
                pdf.complaints());
    }

    /** The engine writes to the right only; letters in the wrong order would be another name. */
    @Test
    void lettersWrittenFromTheRightAreCodesAndReported() {
        Pdf pdf = Paper.print("<p>for \u05D0\u0645 Ltd</p>");
        assertTrue(Paper.text(pdf).contains("for [U+05D0][U+0645] Ltd"), Paper.text(pdf));
        assertEquals(2, pdf.complaints().size(), pdf.complaints().toString());
    }

    @Test
    void aReplacedControlCharacterIsSeenAndReported() {
        Pdf pdf = Paper.print("<p>serial 12\uFFFD34</p>");
        assertTrue(Paper.text(pdf).contains("12\uFFFD34"));
        assertEquals(List.of("an unprintable character was replaced in \"serial 12\uFFFD34\""), pdf.complaints());
    }

    @Test
    void anAccentWrittenApartIsJoinedToItsLetter() {
        Pdf pdf = Paper.print("<p>Go\u030b</p>");
        assertTrue(Paper.text(pdf).contains("G\u0151"));
        assertEquals(List.of(), pdf.complaints());
    }

    @Test
    void aPhonesVariationSelectorLeavesNoTrace() {
        Pdf pdf = Paper.print("<p>\u26a0\ufe0f live</p>");
        assertTrue(Paper.text(pdf).contains("\u26a0"));
        assertEquals(List.of(), pdf.complaints());
    }

    @Test
    void aSignLostInTheStyleSheetsOwnTextIsReported() {
        Pdf pdf = Paper.print("p:before { content: '\u2610 ' }", "<p>x</p>");
        assertEquals(1, pdf.complaints().size());
        assertTrue(pdf.complaints().get(0).contains("U+2610"), pdf.complaints().toString());
    }

    @Test
    void aFaultOfTheStyleSheetStopsThePrint() {
        var fault = assertThrows(
                TemplateComplaint.class, () -> Paper.print("p { colour-of-ink: red; width: 3 bananas }", "<p>x</p>"));
        assertTrue(fault.getMessage().contains("colour-of-ink"), fault.getMessage());
        assertEquals(List.of(), Paper.print("p { color: red }", "<p>x</p>").complaints());
    }

    @Test
    void samePageSameFactsSameBytesWhateverTheMachineSpeaks() {
        String page = Paper.page("@page { @bottom-center { content: counter(page) } }", "<h1>Ω ☐</h1><p>x</p>");
        byte[] first = Paper.print(page, Paper.facts(), Map.of()).content();
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            TimeZone.setDefault(TimeZone.getTimeZone("Asia/Tokyo"));
            var elsewhere = new Renderer(Fonts.load(), "Kerbfolio 0.0-test");
            assertArrayEquals(
                    first, elsewhere.render(page, Paper.facts(), Pictures.NONE).content());
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }

    @Test
    void everyFontIsEmbeddedWhateverTheStyleSheetNames() throws IOException {
        Pdf pdf = Paper.print(
                "h1 { font-family: Arial } em { font-family: monospace } b { font-family: Times, serif }",
                "<h1>x</h1><p>a <i>b</i> <b>c</b> <b><i>d</i></b> ☐ <b>☐</b> <code>e</code> <em>f</em></p>"
                        + "<pre>g</pre><kbd>h</kbd><samp>i</samp><tt>j</tt>");
        var names = new TreeSet<String>();
        try (PdfReader reader = Paper.open(pdf)) {
            for (int i = 1; i < reader.getXrefSize(); i++) {
                if (reader.getPdfObject(i) instanceof PdfDictionary font
                        && PdfName.FONT.equals(font.get(PdfName.TYPE))) {
                    names.add(font.get(PdfName.BASEFONT) + " " + embedded(font));
                }
            }
        }
        assertEquals(
                List.of(
                        "/BBBBBB+LiberationSans-Bold true",
                        "/IIIIII+LiberationSans-Italic true",
                        "/JJJJJJ+LiberationSans-BoldItalic true",
                        "/RRRRRR+LiberationSans true",
                        "/SSSSSS+DejaVuSans true",
                        "/TTTTTT+DejaVuSans-Bold true"),
                List.copyOf(names));
    }

    private static boolean embedded(PdfDictionary font) {
        PdfDictionary inner = font.contains(PdfName.DESCENDANTFONTS)
                ? (PdfDictionary) PdfReader.getPdfObject(
                        font.getAsArray(PdfName.DESCENDANTFONTS).getPdfObject(0))
                : font;
        PdfDictionary descriptor = inner.getAsDict(PdfName.FONTDESCRIPTOR);
        return descriptor != null && descriptor.contains(PdfName.FONTFILE2);
    }

    @Test
    void bookmarksOfThePageBecomeThePdfsOutline() throws IOException {
        String page = "<html xmlns=\"http://www.w3.org/1999/xhtml\"><head><title>t</title><bookmarks>"
                + "<bookmark name=\"Weight Ω\" href=\"#w\"/></bookmarks></head>"
                + "<body><h1 id=\"w\">Weight</h1><p><a href=\"#w\">back</a></p></body></html>";
        try (PdfReader reader = Paper.open(Paper.print(page, Paper.facts(), Map.of()))) {
            List<Map<String, Object>> outline = SimpleBookmark.getBookmarkList(reader);
            assertEquals("Weight Ω", outline.get(0).get("Title"));
        }
    }

    @Test
    void aLineWithASignInItIsNoHigherThanOneWithout() {
        String css = "@page { size: 100mm 100mm; margin: 0 } p { margin: 0; font-size: 10pt }";
        assertEquals(
                lastBaseline(Paper.print(css, "<p>a</p><p>b</p><p>c</p>")),
                lastBaseline(Paper.print(css, "<p>a ☐</p><p>b ⚠</p><p>c</p>")));
    }

    private static String lastBaseline(Pdf pdf) {
        String operators = Paper.operators(pdf);
        String[] matrix = operators.substring(0, operators.lastIndexOf(" Tm")).split("\\s");
        return matrix[matrix.length - 1];
    }

    @Test
    void aPageWithoutAHeadIsRefused() {
        var complaint = assertThrows(
                TemplateComplaint.class, () -> Paper.print("<html><body/></html>", Paper.facts(), Map.of()));
        assertEquals("the page has no <head>", complaint.getMessage());
    }

    @Test
    void wordsAreCopiedOutInTheOrderTheyAreRead() {
        String text = Paper.text(Paper.print("<p>one <b>two</b> three ☐ four <i>five</i> six</p>"));
        // The library that reads it back puts a blank of its own at every change of face.
        assertEquals("one two three ☐ four five six", text.strip().replaceAll(" +", " "));
    }

    @Test
    void textThatRunsOffThePageIsReported() {
        String word = "a".repeat(300);
        Pdf off = Paper.print("<p>" + word + "</p>");
        assertEquals(List.of("text runs off page 1: \"" + "a".repeat(40) + "\""), off.complaints());
        Pdf broken = Paper.print("p { word-wrap: break-word }", "<p>" + word + "</p>");
        assertEquals(List.of(), broken.complaints());
        assertEquals(word, Paper.text(broken).replaceAll("\\s", ""));
    }
}
