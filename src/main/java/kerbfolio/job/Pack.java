package kerbfolio.job;

import java.util.List;
import kerbfolio.quantity.Quantity;
import kerbfolio.reading.In;
import kerbfolio.reading.Means;
import org.jspecify.annotations.Nullable;

/** The traction battery. */
public record Pack(
        @Means("modules in all") @In("1") @Nullable Quantity modules,
        @Means("strings in parallel") @In("1") @Nullable Quantity strings,
        @Means("the cells") @Nullable Cell cell,
        @Means("the modules") @Nullable Module module,
        @Means("which part holds how many modules") List<Box> boxes,

        @Means("currents with the settings in force") @Nullable
        Currents currents,

        @Means("how the bus is filled") @Nullable Precharge precharge,
        @Means("who watches the cells") List<Monitor> monitors) {
    public Pack {
        boxes = Lists.orEmpty(boxes);
        monitors = Lists.orEmpty(monitors);
    }
}
