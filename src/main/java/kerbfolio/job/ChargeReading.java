package kerbfolio.job;

import java.time.LocalDate;
import kerbfolio.quantity.Quantity;
import kerbfolio.reading.In;
import kerbfolio.reading.Means;
import org.jspecify.annotations.Nullable;

/** A charge as it was seen at the inlet. */
public record ChargeReading(
        @Means("id of what measured the duty") @Nullable String instrument,
        @Means("day") @Nullable LocalDate date,
        @Means("who saw it") @Nullable String by,

        @Means("duty of the pilot signal") @In("%") @Nullable
        Quantity duty,

        @Means("who states the supply") @Nullable String supplyFrom,
        @Means("voltage of the supply") @In("V") @Nullable Quantity supplyVoltage,

        @Means("rated current of the supply's breaker") @In("A") @Nullable
        Quantity breaker,

        @Means("rated current of the charge lead") @In("A") @Nullable
        Quantity leadCurrent,

        @Means("state of charge the shop states a time from") @In("%") @Nullable
        Quantity fromCharge,

        @Means("state of charge it states a time to") @In("%") @Nullable
        Quantity toCharge) {}
