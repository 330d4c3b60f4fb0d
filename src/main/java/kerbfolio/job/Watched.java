package kerbfolio.job;

/** What a battery monitor acts on. */
public enum Watched {
    CELL_VOLTAGE_HIGH("cell-voltage-high"),
    CELL_VOLTAGE_LOW("cell-voltage-low"),
    TEMPERATURE_HIGH("temperature-high"),
    TEMPERATURE_LOW("temperature-low"),
    CHARGE_TEMPERATURE_LOW("charge-temperature-low"),
    CHARGE_TEMPERATURE_HIGH("charge-temperature-high");

    private final String key;

    Watched(String key) {
        this.key = key;
    }

    /** Whether it is a voltage of a cell and not a temperature. */
    public boolean isVoltage() {
        return this == CELL_VOLTAGE_HIGH || this == CELL_VOLTAGE_LOW;
    }

    /** As it is written in the job file and on paper. */
    @Override
    public String toString() {
        return key;
    }
}
