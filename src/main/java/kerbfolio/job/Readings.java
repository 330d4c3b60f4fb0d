package kerbfolio.job;

import java.util.List;
import kerbfolio.reading.Means;
import org.jspecify.annotations.Nullable;

/** Raw readings, never results. */
public record Readings(
        @Means("isolation of the poles from the chassis") List<IsolationReading> isolation,

        @Means("test of the isolation monitor by a known resistor") @Nullable
        MonitorTest isolationMonitor,

        @Means("bonding of conductive parts") List<BondingReading> bonding,
        @Means("decay of the bus") List<DecayReading> decay,
        @Means("spread of the cell groups") @Nullable CellReading cells,
        @Means("a charge at the inlet") @Nullable ChargeReading charge) {
    public Readings {
        isolation = Lists.orEmpty(isolation);
        bonding = Lists.orEmpty(bonding);
        decay = Lists.orEmpty(decay);
    }
}
