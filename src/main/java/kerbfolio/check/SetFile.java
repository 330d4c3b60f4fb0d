package kerbfolio.check;

/**
 * A requirement set in force, as it was read.
 *
 * @param set what it says
 * @param own whether it is the shop's own file, which lies beside the job file
 * @param bytes exactly what was read; must not be changed
 */
@SuppressWarnings("ArrayRecordComponent") // never compared; the bytes are what gets attached and hashed
public record SetFile(RequirementSet set, boolean own, byte[] bytes) {
    /** Name of the file, without folder. */
    public String file() {
        return set.set() + ".yaml";
    }
}
