package kerbfolio.job;

/** What a part does in the car; the circuit is drawn and walked by it. */
public enum Role {
    BATTERY("battery", Ports.TWO_POLES),
    BATTERY_MONITOR("battery-monitor", Ports.NONE),
    ISOLATION_MONITOR("isolation-monitor", Ports.TWO_POLES),
    FUSE("fuse", Ports.IN_LINE),
    CONTACTOR("contactor", Ports.IN_LINE),
    DISCONNECT("disconnect", Ports.IN_LINE),
    PRECHARGE_RESISTOR("precharge-resistor", Ports.IN_LINE),
    CURRENT_SENSOR("current-sensor", Ports.IN_LINE),
    JUNCTION_BOX("junction-box", Ports.TWO_POLES),
    INVERTER("inverter", Ports.TWO_POLES),
    DRIVE_UNIT("drive-unit", Ports.TWO_POLES),
    MOTOR("motor", Ports.NONE),
    CHARGER("charger", Ports.TWO_POLES),
    CONVERTER("converter", Ports.TWO_POLES),
    HEATER("heater", Ports.TWO_POLES),
    COMPRESSOR("compressor", Ports.TWO_POLES),
    INLET("inlet", Ports.TWO_POLES),
    CABLES("cables", Ports.NONE),
    COOLING("cooling", Ports.NONE),
    AUXILIARY_BATTERY("auxiliary-battery", Ports.NONE),
    MOUNTING("mounting", Ports.NONE),
    BRAKES("brakes", Ports.NONE),
    OTHER("other", Ports.NONE);

    /** How a part of a role takes part in the direct-current circuit. */
    public enum Ports {
        /** Not at all. */
        NONE,
        /** Between the poles: a source, a box or a consumer, with terminals + and -. */
        TWO_POLES,
        /** In one conductor: terminals 1 and 2, and 3 and 4 where it has a second pole (numbered as in IEC 60947-1). */
        IN_LINE
    }

    private final String key;
    private final Ports ports;

    Role(String key, Ports ports) {
        this.key = key;
        this.ports = ports;
    }

    public Ports ports() {
        return ports;
    }

    /** As it is written in the job file and on paper. */
    @Override
    public String toString() {
        return key;
    }
}
