package kerbfolio.job;

/** What a conductor is made of. */
public enum Metal {
    COPPER("copper"),
    TINNED_COPPER("tinned-copper"),
    ALUMINIUM("aluminium");

    private final String key;

    Metal(String key) {
        this.key = key;
    }

    /** As it is written in the job file and on paper. */
    @Override
    public String toString() {
        return key;
    }
}
