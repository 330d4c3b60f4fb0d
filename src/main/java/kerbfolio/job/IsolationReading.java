package kerbfolio.job;

import java.time.LocalDate;
import java.util.List;
import kerbfolio.quantity.Quantity;
import kerbfolio.reading.In;
import kerbfolio.reading.Means;
import kerbfolio.reading.Must;
import org.jspecify.annotations.Nullable;

/** One measurement of isolation. */
public record IsolationReading(
        @Must @Means("name of the reading") String id,
        @Must @Means("voltmeter, tester or monitor") IsolationMethod method,
        @Means("id of the instrument") @Nullable String instrument,

        @Means("id of what measured the known resistor") @Nullable
        String resistorInstrument,

        @Means("day it was measured") @Nullable LocalDate date,
        @Means("who measured it") @Nullable String by,

        @Means("ids of the parts that were joined to the circuit during the test")
        List<String> joined,

        @Means("dry, wet, warm") @Nullable String condition,

        @Means("pole to pole, read in the same minutes") @In("V") @Nullable
        Quantity packVoltage,

        @Means("minus pole to chassis") @In("V") @Nullable Quantity minusToChassis,
        @Means("plus pole to chassis") @In("V") @Nullable Quantity plusToChassis,

        @Means("the larger of the two again, with the known resistor beside the meter") @In("V") @Nullable
        Quantity withResistor,

        @Means("the known resistor") @In("kΩ") @Nullable Quantity resistor,

        @Means("resistance of the voltmeter") @In("MΩ") @Nullable
        Quantity meterResistance,

        @Means("voltage of the tester") @In("V") @Nullable Quantity testVoltage,

        @Means("pole measured against the chassis by the tester") @Nullable
        Pole pole,

        @Means("what the tester or the monitor showed; > 550 MΩ is a value") @In("MΩ") @Nullable
        Quantity resistance) {
    public IsolationReading {
        joined = Lists.orEmpty(joined);
    }
}
