package kerbfolio.job;

/** What a cable is insulated with; it decides what heat of a short circuit the cable withstands. */
public enum Insulation {
    PVC("pvc"),
    XLPE("xlpe"),
    SILICONE("silicone");

    private final String key;

    Insulation(String key) {
        this.key = key;
    }

    /** As it is written in the job file and on paper. */
    @Override
    public String toString() {
        return key;
    }
}
