package kerbfolio.release;

import java.util.List;
import kerbfolio.job.Gate;
import kerbfolio.job.Waiver;

/**
 * A gate with its state and every reason for it.
 *
 * @param gate the gate
 * @param state held before not examined before no hold recorded
 * @param reasons all of them, holds first
 * @param waivers waivers the state leans on
 */
public record GateReport(Gate gate, GateState state, List<Reason> reasons, List<Waiver> waivers) {}
