package kerbfolio.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TemplatesTest {
    @TempDir
    Path folder;

    /** Stands for the records of the dossier. */
    public record Car(String plate, Optional<String> nickname, OptionalDouble mass, State state, List<String> notes) {
        public String inCapitals() {
            return plate.toUpperCase(java.util.Locale.ROOT);
        }

        public String joined(String word) {
            return plate + word;
        }

        public static String shop() {
            return "static";
        }
    }

    public enum State {
        HELD("held"),
        NO_HOLD("no hold recorded");

        private final String words;

        State(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }

        @Override
        public String toString() {
            return words;
        }
    }

    private static final Car CAR =
            new Car("KF 17", Optional.empty(), OptionalDouble.of(1180.5), State.NO_HOLD, List.of("a", "b"));

    private String fill(String template, Map<String, Object> model) {
        write("page.ftlx", template);
        return Templates.from(folder).fill("page.ftlx", model);
    }

    private void write(String name, String text) {
        try {
            Files.writeString(folder.resolve(name), text);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private TemplateComplaint complaint(String template) {
        return assertThrows(TemplateComplaint.class, () -> fill(template, Map.of("car", CAR, "text", "7*7")));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "${7*7}",
                "#{7*7}",
                "[=7*7]",
                "<#include \"/etc/passwd\">",
                "<#assign x = 1>${x}",
                "${\"freemarker.template.utility.Execute\"?new()(\"id\")}",
                "\"freemarker.template.utility.Execute\"?new()",
                "<script>alert(1)</script>",
                "&amp; &#65; &nbsp; &lt;b>",
                "]]> <!-- x --> <?php ?>",
                "' \" `"
            })
    void wordsOfTheJobFileComeOutAsText(String words) {
        String page = Paper.page("", "<p id=\"${text}\">${text}</p>");
        String filled = fill(page, Map.of("text", words));
        assertTrue(Paper.text(Paper.print(filled, Paper.facts(), Map.of())).contains(words), filled);
    }

    @Test
    void somethingMissingIsNamedWithFileLineAndColumn() {
        TemplateComplaint complaint = complaint("first\nsecond ${car.colour} third");
        assertEquals("page.ftlx", complaint.file());
        assertEquals(2, complaint.line());
        assertEquals(10, complaint.column());
        assertEquals("page.ftlx, line 2, column 10: there is nothing called `car.colour` here", complaint.getMessage());
    }

    @Test
    void aMissingLoopVariableDoesNotFallBackToTheModel() {
        assertThrows(
                TemplateComplaint.class,
                () -> fill(
                        "<#list cars as car>${car}</#list>",
                        Map.of("car", CAR, "cars", java.util.Arrays.asList((Object) null))));
    }

    @Test
    void aFaultInTheTemplateIsNamedWithItsPlace() {
        TemplateComplaint complaint = complaint("ok\n<#if car.plate == >x</#if>");
        assertEquals(2, complaint.line());
        assertTrue(complaint.getMessage().startsWith("page.ftlx, line 2, column "), complaint.getMessage());
    }

    @Test
    void aFaultInAnIncludedTemplateNamesThatTemplate() {
        write("part.ftlx", "\n\n<#list>");
        TemplateComplaint complaint = complaint("<#include \"part.ftlx\">");
        assertEquals("part.ftlx", complaint.file());
        assertEquals(3, complaint.line());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "${car.notes}|For \"${...}\" content: Expected a string or something automatically convertible to string"
                        + " (number, date or boolean), or \"template output\" , but this has evaluated to a sequence",
                "<#include \"nope.ftlx\">|there is no template called `nope.ftlx`",
                "<#import \"nope.ftlx\" as n>|there is no template called `nope.ftlx`",
                "${car.plate?number}|Can't convert this string to number: \"KF 17\"",
                "<#stop \"because\">|because",
                "<p>${car.plate</p>|Encountered \"/\"",
                "<#if car.plate>x</#if>|For \"#if\" condition: Expected a boolean, but this has evaluated to a string",
            })
    void aFaultIsToldInOneLineWithoutWordsOfJava(String template, String told) {
        String message = complaint(template).getMessage();
        assertEquals(told, message.substring(message.indexOf(": ") + 2));
    }

    @Test
    void aTemplateThatCallsItselfIsStopped() {
        assertTrue(complaint("<#include \"page.ftlx\">").getMessage().contains("without end"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "${text?eval}",
                "${text ? <#-- hidden --> eval}",
                "${\"${text?eval}\"}",
                "<@text?interpret />",
                "${text?eval_json}",
                "${\"freemarker.template.utility.Execute\"?new()(\"id\")}",
                "${car?api.class}",
                "${text?no_esc}",
                "${.now}"
            })
    void aTemplateCannotRunOrPrintRawWhatIsInTheDataNorAskTheClock(String template) {
        assertTrue(complaint(template).getMessage().contains("is not allowed in a report template"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "${car.class}",
                "${car.getClass().name}",
                "${car.hashCode()}",
                "${car.toString()}",
                "${car.state.declaringClass.name}",
                "${car.state.ordinal()}",
                "${car.joined(\"x\")}",
                "${car.shop()}",
                "${car.notes.getClass()}",
                "${car.notes.clear()}",
                "${text.bytes}",
                "${day.year}"
            })
    void aTemplateReachesNoJavaThroughTheData(String template) {
        assertThrows(
                TemplateComplaint.class,
                () -> fill(template, Map.of("car", CAR, "text", "x", "day", LocalDate.of(2025, 3, 14))));
    }

    @ParameterizedTest
    @ValueSource(strings = {"/etc/passwd", "../secret.ftlx", "file:///etc/passwd", "http://127.0.0.1:9/x"})
    void aTemplateReachesNoFileOutsideItsFolder(String address) throws IOException {
        Path inner = Files.createDirectory(folder.resolve("inner"));
        write("secret.ftlx", "secret");
        Files.writeString(inner.resolve("page.ftlx"), "<#include \"" + address + "\">");
        assertThrows(TemplateComplaint.class, () -> Templates.from(inner).fill("page.ftlx", Map.of()));
    }

    @Test
    void aLinkOutOfTheFolderIsNotFollowed() throws IOException {
        Path inner = Files.createDirectory(folder.resolve("inner"));
        write("secret.ftlx", "secret");
        Files.createSymbolicLink(inner.resolve("page.ftlx"), folder.resolve("secret.ftlx"));
        assertThrows(TemplateComplaint.class, () -> Templates.from(inner).fill("page.ftlx", Map.of()));
    }

    @Test
    void componentsAndAccessorsAreReadWithOrWithoutBrackets() {
        assertEquals(
                "KF 17 KF 17 KF 17 KF 17 no hold recorded",
                fill(
                        "${car.plate} ${car.plate()} ${car.inCapitals} ${car.inCapitals()} ${car.state.words}",
                        Map.of("car", CAR)));
    }

    @Test
    void anEmptyOptionalIsMissingAndAFullOneIsItsValue() {
        assertEquals(
                "none, false, 1180.5",
                fill("${car.nickname!\"none\"}, ${(car.nickname??)?c}, ${car.mass}", Map.of("car", CAR)));
    }

    @Test
    void anEnumPrintsAndComparesAsItsWords() {
        assertEquals(
                "no hold recorded yes",
                fill("${car.state} <#if car.state == \"no hold recorded\">yes</#if>", Map.of("car", CAR)));
    }

    @Test
    void aNumberIsNeverGroupedOrRounded() {
        assertEquals("1234567.125 true", fill("${n} ${b}", Map.of("n", 1234567.125, "b", true)));
    }

    @Test
    void aControlCharacterBecomesAVisibleSign() {
        String filled = fill("${text}", Map.of("text", "a\u0000b\u001bc\uD800d\uFFFFe\tf"));
        assertEquals("a\uFFFDb\uFFFDc\uFFFDd\uFFFDe\tf", filled);
    }

    @Test
    void aShopsOwnTemplateGoesBeforeTheProgramsOwn() {
        write("math.css", "the shop's");
        assertEquals("the shop's", Templates.from(folder).fill("math.css", Map.of()));
        assertFalse(Templates.bundled().fill("math.css", Map.of()).contains("the shop's"));
    }

    @Test
    void theProgramsOwnTemplateStandsInForOneTheShopDoesNotHave() {
        assertEquals(
                Templates.bundled().fill("math.css", Map.of()),
                Templates.from(folder).fill("math.css", Map.of()));
    }

    @Test
    void aTemplateOrFolderThatIsNotThereIsNamed() {
        var nowhere = assertThrows(TemplateComplaint.class, () -> Templates.from(folder.resolve("nowhere")));
        assertTrue(nowhere.getMessage().contains("nowhere"));
        var missing =
                assertThrows(TemplateComplaint.class, () -> Templates.bundled().fill("nothing.ftlx", Map.of()));
        assertEquals("nothing.ftlx: there is no template of this name", missing.getMessage());
    }
}
