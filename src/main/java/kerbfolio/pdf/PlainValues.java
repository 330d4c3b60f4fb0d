package kerbfolio.pdf;

import freemarker.ext.beans.ZeroArgumentNonVoidMethodPolicy;
import freemarker.template.Configuration;
import freemarker.template.DefaultObjectWrapper;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;

/**
 * How the dossier's records look to a template: components and accessors by name, with or without brackets; an empty
 * Optional is simply missing, so that {@code ??} and {@code !} work; enums print as their own words.
 */
final class PlainValues extends DefaultObjectWrapper {
    PlainValues() {
        super(Configuration.VERSION_2_3_34);
        setMemberAccessPolicy(OwnAccessors.POLICY);
        setDefaultZeroArgumentNonVoidMethodPolicy(
                ZeroArgumentNonVoidMethodPolicy.BOTH_METHOD_AND_PROPERTY_UNLESS_BEAN_PROPERTY_READ_METHOD);
        setDOMNodeSupport(false);
        setJythonSupport(false);
        writeProtect();
    }

    @Override
    @SuppressWarnings("NullAway") // FreeMarker says "missing" with null
    public @Nullable TemplateModel wrap(@Nullable Object value) throws TemplateModelException {
        return super.wrap(unpacked(value));
    }

    private static @Nullable Object unpacked(@Nullable Object value) {
        if (value instanceof Optional<?> maybe) {
            return unpacked(maybe.orElse(null));
        }
        if (value instanceof OptionalDouble maybe) {
            return maybe.isPresent() ? maybe.getAsDouble() : null;
        }
        if (value instanceof OptionalInt maybe) {
            return maybe.isPresent() ? maybe.getAsInt() : null;
        }
        return value;
    }
}
