package kerbfolio.check;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.job.Gate;

/**
 * One engineering question asked of a car. Its id, its template and its test are named after its class, its trade after
 * its package.
 */
public interface Check {
    /** The question in plain words; it is the heading on paper. */
    String question();

    /** The gate its findings hold; empty for a working that is printed and holds nothing. */
    Optional<Gate> gate();

    /** One finding per subject: each axle, each cable, each part. */
    Stream<Finding> examine(Car car, Limits limits);

    /** Whether a named person may let its findings pass. */
    default boolean isWaivable() {
        return true;
    }

    /** {@code axle-margin} for a class AxleMargin. */
    default String id() {
        return getClass().getSimpleName().replaceAll("(?<=[a-z])(?=[A-Z])", "-").toLowerCase(Locale.ROOT);
    }

    /** The sheet of workings and workbook it stands on: its trade's, unless the trade fills several. */
    default String sheet() {
        Sheet own = getClass().getAnnotation(Sheet.class);
        return own == null ? trade().toString() : own.value();
    }

    default Trade trade() {
        return Trade.ofPackage(getClass().getPackageName());
    }
}
