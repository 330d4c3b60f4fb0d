package kerbfolio.job;

/** Who sees to an item of the punch list. */
public enum Owner {
    SHOP("shop"),
    CUSTOMER("customer");

    private final String key;

    Owner(String key) {
        this.key = key;
    }

    /** As it is written in the job file and on paper. */
    @Override
    public String toString() {
        return key;
    }
}
