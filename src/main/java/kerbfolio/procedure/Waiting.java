package kerbfolio.procedure;

import kerbfolio.car.Car;
import kerbfolio.job.Part;
import kerbfolio.quantity.Unit;

/**
 * The wait before the reading.
 *
 * @param minutes whole minutes
 * @param reason what decided it
 */
record Waiting(int minutes, String reason) {
    /** The least where the decay of a bus is not known (common practice, no source). */
    private static final int LEAST_UNKNOWN = 10;

    static Waiting of(Car car) {
        int longest = LEAST_UNKNOWN;
        String reason = "the least where the decay of the bus is not computed";
        for (Part part : car.job().parts()) {
            int stated = car.nameplate(part)
                    .makersWait()
                    .amount()
                    .map(amount -> (int) Math.ceil(
                            (amount.si() + amount.expanded()) / Unit.of("min").factor() - 1e-9))
                    .orElse(0);
            if (stated > longest) {
                longest = stated;
                reason = "the wait the maker of " + part.title() + " states";
            }
        }
        return new Waiting(longest, reason);
    }
}
