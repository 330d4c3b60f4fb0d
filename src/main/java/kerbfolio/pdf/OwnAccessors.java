package kerbfolio.pdf;

import freemarker.ext.beans.ClassMemberAccessPolicy;
import freemarker.ext.beans.MemberAccessPolicy;
import java.lang.reflect.Constructor;
import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.Set;

/**
 * What a template may ask of an object: the plain questions this program's own types answer, and nothing of Java
 * itself. So no template reaches a class, a loader or a file through the data.
 */
final class OwnAccessors implements MemberAccessPolicy {
    static final OwnAccessors POLICY = new OwnAccessors();

    private static final Set<String> JAVAS_OWN = Set.of("hashCode", "toString", "getClass", "clone", "finalize");

    private OwnAccessors() {}

    @Override
    public ClassMemberAccessPolicy forClass(Class<?> type) {
        return new ClassMemberAccessPolicy() {
            @Override
            public boolean isMethodExposed(Method method) {
                return isQuestion(method);
            }

            @Override
            public boolean isConstructorExposed(Constructor<?> constructor) {
                return false;
            }

            @Override
            public boolean isFieldExposed(Field field) {
                return false;
            }
        };
    }

    private static boolean isQuestion(Method method) {
        return method.getDeclaringClass().getName().startsWith("kerbfolio.")
                && method.getParameterCount() == 0
                && method.getReturnType() != void.class
                && !Modifier.isStatic(method.getModifiers())
                && !JAVAS_OWN.contains(method.getName());
    }

    /** Printing an object is always allowed: an enum or a date prints as its own words. */
    @Override
    public boolean isToStringAlwaysExposed() {
        return true;
    }
}
