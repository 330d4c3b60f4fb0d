package kerbfolio.fingerprint;

import java.util.List;

/**
 * Whether a record holds.
 *
 * @param answer the answer
 * @param found what was found, one sentence each
 * @param todo what to do about it
 */
public record Proof(Answer answer, List<String> found, String todo) {
    /** Keeps its own list. */
    public Proof {
        found = List.copyOf(found);
    }

    Proof(Answer answer, String found, String todo) {
        this(answer, List.of(found), todo);
    }
}
