package kerbfolio.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import kerbfolio.quantity.Quantity;
import org.junit.jupiter.api.Test;

/** Keys and values to records; expected places are counted by hand in the text above them. */
class RecordReaderTest {
    record Crate(
            @Must String id,
            String serial,
            String note,
            @In("kg") Quantity mass,
            @In(value = "m", signed = true) Quantity place,
            @In("1") Quantity count,
            @In("%") Quantity share,
            @In("°") Quantity lean,
            @In("°C") Quantity warmest,
            @In("K") Quantity rise,
            @In("*") Quantity error,
            Colour colour,
            LocalDate packed,
            Boolean sealed,
            List<String> marks,
            List<Crate> inside,
            Map<String, Label> labels,
            Unread papers) {}

    record Label(@Must String text, @In("mm") Quantity width) {}

    record Even(@Must @In("1") Quantity number) {
        Even {
            if (number.number() % 2 != 0) {
                throw new IllegalArgumentException("odd; write an even number");
            }
        }
    }

    enum Colour {
        RED,
        DARK_BLUE;

        @Override
        public String toString() {
            return this == RED ? "red" : "dark blue";
        }
    }

    @Test
    void everyKindOfValueIsRead() throws Exception {
        Crate crate = Refusal.read("""
                id: a
                mass: 12.5 lb ± 0.1 lb
                place: -0.4 m
                count: 3
                colour: dark blue
                packed: 2026-02-28
                sealed: yes
                marks: [up, 7]
                inside:
                  - id: b
                    sealed: false
                labels:
                  zulu: {text: z, width: 1 in}
                  alpha: {text: a}
                papers: {one: [1, 2], two:}
                """, Crate.class);
        assertEquals(Quantity.of("12.5 lb ± 0.1 lb"), crate.mass());
        assertEquals(-0.4, crate.place().si());
        assertEquals(3, crate.count().number());
        assertEquals(Colour.DARK_BLUE, crate.colour());
        assertEquals(LocalDate.of(2026, 2, 28), crate.packed());
        assertEquals(true, crate.sealed());
        assertEquals(List.of("up", "7"), crate.marks());
        assertEquals("b", crate.inside().get(0).id());
        assertEquals(false, crate.inside().get(0).sealed());
        assertEquals(List.of("zulu", "alpha"), List.copyOf(crate.labels().keySet()), "in the order of the file");
        // one and two: what stands inside an entry is not counted.
        assertEquals(new Unread(2), crate.papers());
    }

    @Test
    void aTextSurvivesAsItIsWritten() throws Exception {
        for (String text : List.of("0012345", "1.10", "no", "0x1F", "1_000", "1e3", "Null", "true", "=1+1", "12:30")) {
            assertEquals(text, Refusal.read("id: " + text, Crate.class).id());
            assertEquals(text, Refusal.read("id: '" + text + "'", Crate.class).id());
            String json = "{\"id\": \"" + text + "\"}";
            assertEquals(
                    text,
                    RecordReader.read("f.json", json.getBytes(StandardCharsets.UTF_8), Crate.class)
                            .value()
                            .id());
        }
    }

    @Test
    void whatIsLeftOutOrLeftEmptyIsAbsent() throws Exception {
        Crate crate = Refusal.read("id: a\nserial:\nmass: ~\ninside:\nlabels: null\nnote: ''\n", Crate.class);
        assertNull(crate.serial());
        assertNull(crate.mass());
        assertNull(crate.inside());
        assertNull(crate.labels());
        assertNull(crate.packed());
        assertNull(crate.note(), "an empty text answers nothing");
    }

    @Test
    void anUnknownKeyIsToldWithTheOneMeant() {
        assertEquals(
                List.of(
                        "f.yaml:2:1: serail: unknown key `serail`; did you mean `serial`?",
                        "f.yaml:4:5: inside > entry 1 > idd: unknown key `idd`; did you mean `id`?",
                        "f.yaml:5:14: labels > x > txet: unknown key `txet`; did you mean `text`?",
                        "f.yaml:6:1: zzz: unknown key `zzz`; known here: id, serial, note, mass, place, count, share,"
                                + " lean, warmest, rise, error, colour, packed, sealed, marks, inside, labels, papers"),
                Refusal.of("""
                        id: a
                        serail: 1
                        inside:
                          - idd: b
                        labels: {x: {txet: y}}
                        zzz: 1
                        """, Crate.class));
    }

    @Test
    void aKeyThatMayNotBeLeftOutIsAskedForWhereItBelongs() {
        assertEquals(
                List.of(
                        "f.yaml:1:1: `id` may not be left out; write `id: …`",
                        "f.yaml:3:5: inside > entry 1: `id` may not be left out; write `id: …`",
                        "f.yaml:4:5: inside > entry 2 > id: `id` may not be left out; write `id: …`",
                        "f.yaml:5:9: inside > entry 3 > id: may not be empty; write its value or a word in its place",
                        "f.yaml:7:3: labels > top: `text` may not be left out; write `text: …`"),
                Refusal.of("""
                        note: x
                        inside:
                          - note: y
                          - id:
                          - id: ''
                        labels:
                          top: {width: 3 mm}
                        """, Crate.class));
    }

    @Test
    void wordsDaysAndYesOrNoAreToldHowToBeWritten() {
        assertEquals(
                List.of(
                        "f.yaml:2:9: colour: `rad` is none of its words, red, dark blue; did you mean `red`?",
                        "f.yaml:3:9: packed: `31.3.2026` is not a day of the calendar; write year-month-day, such as"
                                + " 2026-03-31",
                        "f.yaml:4:9: sealed: `maybe` is neither yes nor no; write one of them"),
                figure("colour: rad\npacked: 31.3.2026\nsealed: maybe"));
        assertEquals(
                List.of("f.yaml:2:9: packed: `2026-02-29` is not a day of the calendar; write year-month-day, such as"
                        + " 2026-03-31"),
                figure("packed: 2026-02-29"));
    }

    @Test
    void aValueOfTheWrongShapeIsToldItsShape() {
        assertEquals(
                List.of(
                        "f.yaml:2:1: serial: takes one value, not a list; write it after the `:` in the same line",
                        "f.yaml:3:1: mass: takes one value, not keys; write it after the `:` in the same line",
                        "f.yaml:4:8: marks: takes a list: begin each entry with `- ` on its own line below it",
                        "f.yaml:6:5: inside > entry 1: takes keys, each on its own line below it: id, serial, note, mass,"
                                + " place, count, share, lean, warmest, rise, error, colour, packed, sealed, marks, inside,"
                                + " labels, papers",
                        "f.yaml:7:4: inside > entry 2: an entry with nothing in it; fill it or take it out",
                        "f.yaml:8:9: labels: takes names, each with its content below it"),
                figure("""
                        serial: [1]
                        mass: {a: 1 kg}
                        marks: up
                        inside:
                          - b
                          -
                        labels: text
                        """));
    }

    @Test
    void twoEntriesNeverShareAnId() {
        assertEquals(
                List.of("f.yaml:4:9: inside > b > id: `b` is the id of two entries; give one another id"),
                figure("inside:\n  - id: b\n  - id: b\n    note: second\n"));
    }

    @Test
    void laterPassesAddTheirComplaintsAtTheirPath() {
        byte[] bytes = "id: a\nmass: 3 lb\ninside:\n  - id: b\n".getBytes(StandardCharsets.UTF_8);
        Complaints complaints = assertThrows(
                Complaints.class,
                () -> RecordReader.read("f.yaml", bytes, Crate.class, (crate, book) -> {
                    book.add("inside[b].mass", "no mass");
                    book.add("mass", "too light: " + crate.mass());
                }));
        assertEquals("f.yaml:2:7: mass: too light: 3 lb\nf.yaml:4:5: inside > b: no mass", complaints.getMessage());
    }

    @Test
    void aRecordThatRefusesItsValuesIsAComplaint() {
        assertEquals(List.of("f.yaml:1:1: odd; write an even number"), Refusal.of("number: 3", Even.class));
        assertEquals(
                List.of("f.yaml:1:9: number: `x` is no number; write a bare number, such as 4 or 0.95"),
                Refusal.of("number: x", Even.class));
        assertTrue(Refusal.of("{}", Even.class).get(0).contains("may not be left out"));
    }

    private static List<String> figure(String lines) {
        return Refusal.of("id: a\n" + lines, Crate.class);
    }
}
