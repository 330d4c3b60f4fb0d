package kerbfolio.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MarkupTest {
    private static String refusal(String xhtml) {
        return assertThrows(TemplateComplaint.class, () -> Markup.read(xhtml)).getMessage();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<!DOCTYPE html>",
                "<!DOCTYPE html [<!ENTITY x SYSTEM \"file:///etc/passwd\">]>",
                "<!DOCTYPE html SYSTEM \"http://127.0.0.1:9/x.dtd\">",
                "<!DOCTYPE html [<!ENTITY a \"aaaa\"><!ENTITY b \"&a;&a;&a;&a;\">]>"
            })
    void aDocumentTypeIsRefused(String type) {
        assertTrue(refusal(type + Paper.page("", "<p>&x;</p>")).contains("DOCTYPE"));
    }

    @Test
    void anEntityIsRefusedWithItsLine() {
        String refusal = refusal(Paper.page("", "<p>ok</p>\n<p>5&nbsp;kg</p>"));
        assertTrue(refusal.contains("nbsp") && refusal.contains("Line 2: <p>5&nbsp;kg</p>"), refusal);
    }

    @Test
    void aTagLeftOpenIsRefused() {
        assertTrue(refusal(Paper.page("", "<p><b>x</p>")).startsWith("the filled page is not well-formed"));
    }

    @ParameterizedTest
    @CsvSource({
        "<img src='file:///etc/passwd'/>, file:///etc/passwd",
        "<img src='http://127.0.0.1:9/x.png'/>, http://127.0.0.1:9/x.png",
        "<img src='data:image/png;base64;AAAA'/>, data:image/png;base64;AAAA",
        "<link rel='stylesheet' href='file:///x.css'/>, file:///x.css",
        "<iframe src='file:///etc/passwd'/>, file:///etc/passwd",
        "<a href='http://127.0.0.1:9/'>x</a>, http://127.0.0.1:9/",
        "<a href='javascript:x()'>x</a>, javascript:x()",
        "<script>x()</script>, <script>",
        "<input type='checkbox'/>, <input>",
        "<p onclick='x()'>x</p>, onclick",
    })
    void whatReachesOutOrActsIsRefusedByName(String element, String named) {
        String refusal = refusal(Paper.page("", element));
        assertTrue(refusal.contains(named), refusal);
    }

    @Test
    void everythingRefusedIsNamedAtOnce() {
        String refusal = refusal(Paper.page("", "<img src='a'/><script/><a href='b'>x</a>"));
        assertEquals(3, refusal.lines().count());
    }
}
