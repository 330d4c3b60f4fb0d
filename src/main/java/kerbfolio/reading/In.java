package kerbfolio.reading;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** The unit a quantity is asked for in; any unit of the same kind is taken. */
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.FIELD, ElementType.RECORD_COMPONENT, ElementType.PARAMETER, ElementType.METHOD})
public @interface In {
    /** A unit's text, {@code "1"} for a bare number, or {@code "*"} where any unit may stand. */
    String value();

    /** Whether a value below zero makes sense, as for a position. */
    boolean signed() default false;
}
