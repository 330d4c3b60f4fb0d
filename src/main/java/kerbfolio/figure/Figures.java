package kerbfolio.figure;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.dossier.Dossier;

/** The figures of a dossier. */
public final class Figures {
    private Figures() {}

    /** Those the job has something to show for, in the order of the page. */
    public static List<Figure> of(Dossier dossier) {
        return Stream.<Optional<? extends Figure>>of(
                        CornerWeights.of(dossier),
                        CentreMovement.of(dossier),
                        MassLedger.of(dossier),
                        AxleMargins.of(dossier),
                        CircuitDrawing.of(dossier),
                        LocationPlan.of(dossier),
                        DecayCurves.of(dossier),
                        FuseCurves.of(dossier))
                .<Figure>flatMap(Optional::stream)
                .toList();
    }
}
