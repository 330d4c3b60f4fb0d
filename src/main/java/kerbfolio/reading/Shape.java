package kerbfolio.reading;

import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The keys a record takes, in its order.
 *
 * @param keys by the key's name
 * @param constructor makes the record from one value a key
 */
record Shape(Map<String, Key> keys, Constructor<?> constructor) {
    /**
     * One key.
     *
     * @param type what its value is
     * @param must whether it may not be left out
     * @param in the unit asked for, where it is a quantity
     */
    record Key(Type type, boolean must, @Nullable In in) {}

    static Shape of(Class<?> type) {
        var keys = new LinkedHashMap<String, Key>();
        RecordComponent[] components = type.getRecordComponents();
        for (RecordComponent component : components) {
            keys.put(
                    Kebab.of(component.getName()),
                    new Key(
                            component.getGenericType(),
                            component.isAnnotationPresent(Must.class),
                            component.getAnnotation(In.class)));
        }
        try {
            Constructor<?> constructor = type.getDeclaredConstructor(
                    Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new));
            constructor.setAccessible(true);
            return new Shape(keys, constructor);
        } catch (NoSuchMethodException e) {
            throw new IllegalStateException("a record without its own constructor: " + type, e);
        }
    }
}
