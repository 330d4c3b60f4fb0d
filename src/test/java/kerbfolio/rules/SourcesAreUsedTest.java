package kerbfolio.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kerbfolio.source.Source;
import kerbfolio.source.Table;
import org.junit.jupiter.api.Test;

/** A document nothing is taken from is not a source. */
class SourcesAreUsedTest {
    @Test
    void everySourceIsCited() {
        Set<String> unused =
                Arrays.stream(Source.values()).map(Source::name).collect(Collectors.toCollection(TreeSet::new));
        new ClassFileImporter()
                .withImportOption(new ImportOption.DoNotIncludeTests()).importPackages("kerbfolio").stream()
                        .filter(type -> !type.isEquivalentTo(Source.class))
                        .flatMap(type -> type.getFieldAccessesFromSelf().stream())
                        .filter(access -> access.getTargetOwner().isEquivalentTo(Source.class))
                        .forEach(access -> unused.remove(access.getTarget().getName()));
        assertEquals(Set.of(), unused);
    }

    @Test
    void everyTableSaysWhereItIsFromAndIsUsed() throws IOException {
        String program = program();
        try (Stream<Path> files = Files.list(Path.of("shared/tables"))) {
            for (Path file : files.toList()) {
                String name = String.valueOf(file.getFileName()).replace(".csv", "");
                Table table = Table.of(name);
                assertFalse(table.rows().isEmpty(), name);
                assertFalse(table.unit().isBlank(), name);
                assertTrue(table.citation().document().length() > 10, name);
                assertTrue(program.contains("Table.of(\"" + name + "\")"), name);
            }
        }
    }

    private static String program() throws IOException {
        var text = new StringBuilder();
        try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                text.append(Files.readString(file));
            }
        }
        return text.toString();
    }
}
