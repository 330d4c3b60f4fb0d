package kerbfolio.figure;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import kerbfolio.job.Part;

/**
 * A box of the car around what sits inside it. Its sides lie on columns of the grid; its top and foot half a row
 * outside the rows it names, the first of which has its title.
 */
record Frame(Part part, Set<String> members, int left, int top, int right, int bottom) {
    private static final double LETTER = 4.4;

    /** Around some stands, with a row for its title, and one more where bars have their signs. */
    static Frame around(Part part, Collection<Stand> inside) {
        boolean isJunction = inside.stream().anyMatch(stand -> stand.look() == Stand.Look.RAILS);
        return new Frame(
                part,
                inside.stream().map(stand -> stand.part().id()).collect(Collectors.toUnmodifiableSet()),
                inside.stream().mapToInt(Stand::x).min().orElseThrow() - 1,
                inside.stream().mapToInt(Stand::y).min().orElseThrow() - (isJunction ? 2 : 1),
                inside.stream().mapToInt(Stand::right).max().orElseThrow() + 1,
                inside.stream().mapToInt(Stand::bottom).max().orElseThrow());
    }

    /** As wide as its title needs, but for what stands at a column. */
    Frame wide(int most) {
        return new Frame(part, members, left, top, Math.max(right, Math.min(left + title(), most)), bottom);
    }

    /** Columns its title takes. */
    int title() {
        return (int) Math.ceil(part.title().length() * LETTER / CircuitSheet.STEP) + 1;
    }

    boolean overlaps(Frame other) {
        return left < other.right && other.left < right && top <= other.bottom && other.top <= bottom;
    }

    /** What stands within its sides and is not in it. */
    List<Stand> strangers(Collection<Stand> stands) {
        return stands.stream()
                .filter(stand -> !members.contains(stand.part().id()))
                .filter(stand -> stand.x() - 1 < right
                        && left < stand.right() + 1
                        && stand.y() <= bottom
                        && top <= stand.bottom())
                .toList();
    }
}
