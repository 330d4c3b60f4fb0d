package kerbfolio.reading;

import java.util.List;
import java.util.stream.Collectors;

/** A file that cannot be used, with everything that is wrong with it, in the order of its places. */
public final class Complaints extends Exception {
    private static final long serialVersionUID = 1L;

    private final transient List<Complaint> list;

    public Complaints(List<Complaint> list) {
        super(list.stream().map(Complaint::toString).collect(Collectors.joining("\n")));
        this.list = List.copyOf(list);
    }

    public List<Complaint> list() {
        return list;
    }
}
