package kerbfolio.car;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.formula.Term;
import kerbfolio.job.Part;
import org.junit.jupiter.api.Test;

/**
 * What may stay live, against a calculation of its own: every set of consumers is taken to conduct, voltages are spread
 * by the shortest-path recurrence of Floyd and Warshall over a table of terminals, and the largest is kept. Seeded; ideal
 * sources.
 */
class RandomCircuitsTest {
    private static final double CELL = 4.0;

    /** A circuit as plain tables: what the job file says, told twice. */
    private static final class Drawn {
        final List<String> terminals = new ArrayList<>();
        final List<String> consumers = new ArrayList<>();
        final List<String> disconnects = new ArrayList<>();
        final Map<String, Integer> boxes = new LinkedHashMap<>();
        final List<String[]> links = new ArrayList<>();
        final List<String> inLine = new ArrayList<>();

        Drawn(Random random) {
            for (int i = 0; i < 1 + random.nextInt(4); i++) {
                boxes.put("box" + i, 1 + random.nextInt(30));
            }
            for (int i = 0; i < 1 + random.nextInt(2); i++) {
                disconnects.add("disconnect" + i);
            }
            for (int i = 0; i < random.nextInt(4); i++) {
                inLine.add((random.nextBoolean() ? "fuse" : "contactor") + i);
            }
            for (int i = 0; i < 1 + random.nextInt(5); i++) {
                consumers.add("heater" + i);
            }
            boxes.keySet().forEach(id -> terminals.addAll(List.of(id + "/-", id + "/+")));
            consumers.forEach(id -> terminals.addAll(List.of(id + "/-", id + "/+")));
            disconnects.forEach(id -> terminals.addAll(List.of(id + "/1", id + "/2")));
            inLine.forEach(id -> terminals.addAll(List.of(id + "/1", id + "/2")));
            if (random.nextInt(4) > 0) {
                inSeries(random);
            }
            int count = random.nextInt(links.isEmpty() ? terminals.size() : 3);
            for (int i = 0; i < count; i++) {
                link(any(random), any(random));
            }
        }

        /** Boxes and what lies in the conductor in one row, in any order; consumers between any two places of it. */
        private void inSeries(Random random) {
            var row = new ArrayList<>(boxes.keySet());
            row.addAll(disconnects);
            row.addAll(inLine);
            Collections.shuffle(row, random);
            for (int i = 1; i < row.size(); i++) {
                link(
                        row.get(i - 1) + (isBox(row.get(i - 1)) ? "/+" : "/2"),
                        row.get(i) + (isBox(row.get(i)) ? "/-" : "/1"));
            }
            for (String id : consumers) {
                link(id + "/-", any(random));
                link(id + "/+", any(random));
            }
        }

        private boolean isBox(String id) {
            return boxes.containsKey(id);
        }

        private String any(Random random) {
            return terminals.get(random.nextInt(terminals.size()));
        }

        private void link(String from, String to) {
            if (!from.equals(to)) {
                links.add(new String[] {from, to});
            }
        }

        Car car() {
            JobText job = JobText.blank()
                    .with("pack.module", "{ from: maker, cell-groups: \"1\" }")
                    .with("pack.cell", "{ from: maker, max-voltage: " + CELL + " V }");
            boxes.forEach((id, modules) -> job.add("parts", "{ id: " + id + ", role: battery }")
                    .add("pack.boxes", "{ part: " + id + ", modules: \"" + modules + "\" }"));
            consumers.forEach(id -> job.add("parts", "{ id: " + id + ", role: heater }"));
            disconnects.forEach(id -> job.add("parts", "{ id: " + id + ", role: disconnect }"));
            inLine.forEach(id ->
                    job.add("parts", "{ id: " + id + ", role: " + id.substring(0, id.length() - 1) + " }"));
            for (int i = 0; i < links.size(); i++) {
                job.add(
                        "links",
                        "{ id: l" + i + ", kind: busbar, from: " + links.get(i)[0] + ", to: " + links.get(i)[1] + " }");
            }
            return job.car();
        }

        /** Volts from each terminal to each other, NaN where nothing joins them; no table at all if two ways disagree. */
        double[][] spread(List<String> open, List<String> conducting) {
            int n = terminals.size();
            double[][] volts = new double[n][n];
            for (int i = 0; i < n; i++) {
                Arrays.fill(volts[i], Double.NaN);
                volts[i][i] = 0;
            }
            boolean agrees = true;
            for (String[] link : links) {
                agrees &= join(volts, link[0], link[1], 0);
            }
            for (String id : inLine) {
                agrees &= join(volts, id + "/1", id + "/2", 0);
            }
            for (String id : disconnects) {
                agrees &= open.contains(id) || join(volts, id + "/1", id + "/2", 0);
            }
            for (Map.Entry<String, Integer> box : boxes.entrySet()) {
                agrees &= join(volts, box.getKey() + "/-", box.getKey() + "/+", box.getValue() * CELL);
            }
            for (String id : conducting) {
                agrees &= join(volts, id + "/-", id + "/+", 0);
            }
            for (int k = 0; k < n; k++) {
                for (int i = 0; i < n; i++) {
                    for (int j = 0; j < n; j++) {
                        double way = volts[i][k] + volts[k][j];
                        if (Double.isNaN(volts[i][j])) {
                            volts[i][j] = way;
                        } else if (!Double.isNaN(way) && Math.abs(way - volts[i][j]) > 1e-6) {
                            agrees = false;
                        }
                    }
                }
            }
            return agrees ? volts : new double[0][];
        }

        private boolean join(double[][] volts, String from, String to, double step) {
            int i = terminals.indexOf(from);
            int j = terminals.indexOf(to);
            boolean agrees = Double.isNaN(volts[i][j]) || Math.abs(volts[i][j] - step) < 1e-6;
            volts[i][j] = step;
            volts[j][i] = -step;
            return agrees;
        }

        /** The most any set of other consumers lets stand between two terminals; empty where nothing ever joins them. */
        OptionalDouble most(String a, String b, List<String> open, List<String> others) {
            double most = Double.NaN;
            for (int set = 0; set < 1 << others.size(); set++) {
                var conducting = new ArrayList<String>();
                for (int i = 0; i < others.size(); i++) {
                    if ((set & 1 << i) != 0) {
                        conducting.add(others.get(i));
                    }
                }
                double[][] volts = spread(open, conducting);
                // Ways that disagree let a current flow; each of them alone is the work of a smaller set.
                if (volts.length > 0) {
                    double found = Math.abs(volts[terminals.indexOf(a)][terminals.indexOf(b)]);
                    most = Double.isNaN(most) ? found : Double.isNaN(found) ? most : Math.max(most, found);
                }
            }
            return Double.isNaN(most) ? OptionalDouble.empty() : OptionalDouble.of(most);
        }
    }

    @Test
    void whatMayStayLiveIsTheMostAnySetOfConsumersLetsStand() {
        int dead = 0;
        int live = 0;
        int disagreeing = 0;
        for (int seed = 0; seed < 400; seed++) {
            var drawn = new Drawn(new Random(seed));
            Car car = drawn.car();
            for (List<String> open : List.of(drawn.disconnects, List.<String>of())) {
                LiveParts left = car.liveParts(open);
                boolean agrees = drawn.spread(open, List.of()).length > 0;
                for (String id : drawn.consumers) {
                    Term found = left.betweenPoles(part(car, id));
                    assertEquals(agrees, found.amount().isPresent(), seed + " " + id + ": " + found.origin());
                    if (agrees) {
                        var others = new ArrayList<>(drawn.consumers);
                        others.remove(id);
                        double expected =
                                drawn.most(id + "/-", id + "/+", open, others).orElse(0);
                        assertEquals(expected, Found.value(found), 1e-9, seed + " " + id + " with open " + open);
                        dead += expected == 0 ? 1 : 0;
                        live += expected > 0 ? 1 : 0;
                    }
                }
                disagreeing += agrees ? 0 : 1;
                for (String id : open) {
                    if (agrees) {
                        assertEquals(
                                drawn.most(id + "/1", id + "/2", open, drawn.consumers)
                                        .orElse(0),
                                Found.value(left.betweenTerminals(part(car, id))),
                                1e-9,
                                seed + " " + id);
                    }
                }
            }
        }
        String seen = dead + " dead, " + live + " live, " + disagreeing + " in short circuit";
        assertTrue(dead > 500 && live > 250 && disagreeing > 100, seen);
    }

    private static Part part(Car car, String id) {
        return car.circuit().part(id).orElseThrow();
    }
}
