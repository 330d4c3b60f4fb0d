package kerbfolio.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.lowagie.text.pdf.PRStream;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfReader;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import kerbfolio.Sketch;
import kerbfolio.figure.Figure;
import org.junit.jupiter.api.Test;

class FigureBoxTest {
    private static Pdf print(String object, Figure figure) {
        return Paper.print(
                Paper.page("object { display: block; width: 72pt; height: 36pt }", object),
                Paper.facts(),
                Map.of(figure.id(), figure));
    }

    private static final String PLACE = "<object type=\"figure\" data=\"sketch\"></object>";

    /** The drawing operators of the form the figure became, in clear. */
    private static String operators(Pdf pdf) throws IOException {
        try (PdfReader reader = Paper.open(pdf)) {
            for (int i = 1; i < reader.getXrefSize(); i++) {
                if (reader.getPdfObject(i) instanceof PRStream stream
                        && PdfName.FORM.equals(stream.get(PdfName.SUBTYPE))) {
                    return new String(PdfReader.getStreamBytes(stream), StandardCharsets.ISO_8859_1);
                }
            }
        }
        return "";
    }

    @Test
    void aFigureIsGivenItsRoomInPoints() {
        var sketch = new Sketch(g -> {});
        print(PLACE, sketch);
        assertEquals(72, sketch.room().get(0), 0.05);
        assertEquals(36, sketch.room().get(1), 0.05);
    }

    @Test
    void aHeightThatIsNotGivenFollowsTheFiguresProportions() {
        var sketch = new Sketch(g -> {});
        Paper.print(
                Paper.page("object { display: block; width: 144pt }", PLACE), Paper.facts(), Map.of("sketch", sketch));
        assertEquals(144, sketch.room().get(0), 0.05);
        assertEquals(72, sketch.room().get(1), 0.05);
    }

    @Test
    void linesStayVectors() throws IOException {
        String operators = operators(print(PLACE, new Sketch(g -> g.draw(new Line2D.Double(0, 0, 72, 36)))));
        assertTrue(operators.contains("0 36 m") && operators.contains("72 0 l"), operators);
    }

    @Test
    void wordsOfAFigureStayTextInTheEmbeddedFaces() {
        Pdf pdf = print(PLACE, new Sketch(g -> {
            g.setFont(new Font("no such font", Font.BOLD, 8));
            g.setColor(Color.RED);
            g.drawString("front ☐ 中", 5, 20);
            Graphics2D child = (Graphics2D) g.create();
            child.rotate(0.5);
            child.drawString("rear Ω", 5f, 30f);
            child.dispose();
        }));
        String text = Paper.text(pdf);
        assertTrue(text.contains("front ☐ [U+4E2D]") && text.contains("rear Ω"), text);
        assertEquals(1, pdf.complaints().size());
    }

    @Test
    void wordsOfAFigureStandWhereTheyAreDrawn() throws IOException {
        String operators = operators(print(PLACE, new Sketch(g -> {
            g.setFont(new Font("x", Font.PLAIN, 10));
            g.translate(2, 3);
            g.drawString("a", 5, 20);
        })));
        assertTrue(operators.contains("1 0 0 1 7 13 Tm"), operators);
    }

    /** Arial's and Liberation Sans's widths are those of Helvetica: A 667, V 667, i 222 of 1000 (Adobe core AFM); OpenPDF drops fractions. */
    @Test
    void wordsAreMeasuredByTheEmbeddedFace() {
        print(PLACE, new Sketch(g -> {
            var metrics = g.getFontMetrics(new Font("no such font", Font.PLAIN, 1000));
            assertEquals(667 + 667 + 222, metrics.stringWidth("AVi"), 3);
            assertEquals(667 + 667 + 222, metrics.getStringBounds("AVi", g).getWidth(), 3);
            assertEquals(222, metrics.charWidth('i'), 1);
        }));
    }

    @Test
    void aFigureIsTheSameEveryTime() {
        var sketch = new Sketch(g -> g.drawString("x", 5, 5));
        assertArrayEquals(print(PLACE, sketch).content(), print(PLACE, sketch).content());
    }

    @Test
    void aFigureThatIsNotThereIsNamed() {
        var complaint = assertThrows(
                TemplateComplaint.class,
                () -> print("<object type=\"figure\" data=\"plan\"></object>", new Sketch(g -> {})));
        assertEquals("there is no picture `plan`; there are [sketch]", complaint.getMessage());
    }

    @Test
    void aFigureWithoutAWidthIsNamed() {
        var complaint = assertThrows(
                TemplateComplaint.class,
                () -> Paper.print(Paper.page("", PLACE), Paper.facts(), Map.of("sketch", new Sketch(g -> {}))));
        assertEquals("the picture `sketch` needs a width", complaint.getMessage());
    }

    @Test
    void anObjectThatIsNoFigureIsRefusedByItsAddress() {
        var complaint = assertThrows(
                TemplateComplaint.class,
                () -> print("<object data=\"file:///etc/passwd\"></object>", new Sketch(g -> {})));
        assertTrue(complaint.getMessage().contains("file:///etc/passwd"));
    }
}
