package kerbfolio.job;

import kerbfolio.quantity.Quantity;
import kerbfolio.reading.In;
import kerbfolio.reading.Means;
import org.jspecify.annotations.Nullable;

/** What the maker of the cells allows. */
public record Cell(
        @Means("the data sheet, or who states it") @Nullable String from,
        @Means("what the cell is") @Nullable String chemistry,
        @Means("nominal voltage") @In("V") @Nullable Quantity nominalVoltage,
        @Means("highest voltage") @In("V") @Nullable Quantity maxVoltage,
        @Means("lowest voltage") @In("V") @Nullable Quantity minVoltage,
        @Means("capacity of one cell") @In("Ah") @Nullable Quantity capacity,

        @Means("highest temperature in use") @In(value = "°C", signed = true) @Nullable
        Quantity maxTemperature,

        @Means("lowest temperature in use") @In(value = "°C", signed = true) @Nullable
        Quantity minTemperature,

        @Means("highest temperature in charge") @In(value = "°C", signed = true) @Nullable
        Quantity maxChargeTemperature,

        @Means("lowest temperature in charge") @In(value = "°C", signed = true) @Nullable
        Quantity minChargeTemperature) {}
