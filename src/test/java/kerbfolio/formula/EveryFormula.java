package kerbfolio.formula;

import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.lang.reflect.Field;
import java.util.List;

/**
 * Every {@code static final Formula} of the program, found in its compiled classes, so that a new one is tested the day
 * it is written.
 *
 * @param where class and field
 */
record EveryFormula(String where, Formula formula) {

    private static final List<EveryFormula> OF_THE_PROGRAM = walk();

    static List<EveryFormula> ofTheProgram() {
        return OF_THE_PROGRAM;
    }

    private static List<EveryFormula> walk() {
        return new ClassFileImporter()
                .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS).importPackages("kerbfolio").stream()
                        .flatMap(type -> type.getFields().stream())
                        .filter(field -> field.getRawType().isEquivalentTo(Formula.class)
                                && field.getModifiers().contains(JavaModifier.STATIC))
                        .map(EveryFormula::read)
                        .sorted((a, b) -> a.where.compareTo(b.where))
                        .toList();
    }

    private static EveryFormula read(JavaField found) {
        try {
            Field field = found.reflect();
            field.setAccessible(true);
            String where = found.getOwner().getSimpleName() + "." + found.getName();
            return new EveryFormula(where, (Formula) field.get(null));
        } catch (IllegalAccessException e) {
            throw new AssertionError(found.getFullName(), e);
        }
    }

    @Override
    public String toString() {
        return where + ": " + formula.text();
    }
}
