package kerbfolio.rules;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kerbfolio.check.Check;
import kerbfolio.checks.CheckList;
import org.junit.jupiter.api.Test;

/** A check is found by its class, its line in the list, its id, its test and its template, and all are one name. */
class ChecksAreListedTest {
    private static List<String> listed() {
        return CheckList.ALL.stream().map(check -> check.getClass().getName()).toList();
    }

    @Test
    void everyCheckIsInTheListExactlyOnce() {
        Set<String> written = new ClassFileImporter()
                .withImportOption(new ImportOption.DoNotIncludeTests()).importPackages("kerbfolio.checks").stream()
                        .filter(type -> type.isAssignableTo(Check.class))
                        .map(JavaClass::getName)
                        .collect(Collectors.toSet());
        assertFalse(written.isEmpty());
        assertEquals(written, new HashSet<>(listed()));
        assertEquals(listed().stream().distinct().toList(), listed());
    }

    @Test
    void everyCheckHasATestOfItsName() {
        for (String check : listed()) {
            assertDoesNotThrow(() -> Class.forName(check + "Test"), check + "Test");
        }
    }

    /** The kebab form, worked letter by letter and not by the pattern the program uses. */
    @Test
    void anIdIsTheNameOfItsClass() {
        for (Check check : CheckList.ALL) {
            var kebab = new StringBuilder();
            for (char letter : check.getClass().getSimpleName().toCharArray()) {
                kebab.append(Character.isUpperCase(letter) && !kebab.isEmpty() ? "-" : "")
                        .append(Character.toLowerCase(letter));
            }
            assertEquals(kebab.toString(), check.id());
        }
    }

    @Test
    void everyTemplateOfAQuestionIsACheck() throws IOException {
        Set<String> ids = CheckList.ALL.stream().map(Check::id).collect(Collectors.toSet());
        try (Stream<Path> templates = Files.list(Path.of("report-templates/checks"))) {
            for (Path template : templates.toList()) {
                String name = String.valueOf(template.getFileName()).replace(".ftlx", "");
                assertTrue(name.startsWith("_") || ids.contains(name), template.toString());
            }
        }
    }
}
