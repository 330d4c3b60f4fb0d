package kerbfolio.dossier;

import java.util.List;

/** The usual cautions. They stand on the first pages and beside the work that can hurt someone. */
final class Cautions {
    static final List<String> ALL = List.of(
            "Traction voltage can kill, also with the key out and the 12 V battery disconnected. Work on it only if you "
                    + "are trained and allowed to where you are; prove it dead each time before you touch it.",
            "This record says what was measured, computed, observed or stated, and whether a figure was met or not met. "
                    + "It gives no permission. The local authority, local codes and licensed people decide whether the "
                    + "car may be driven, and where.",
            "Lift the car only at its lifting points and watch where its centre of gravity now is: it is not where it "
                    + "was before the conversion, and it moves again when a heavy part is taken out.",
            "Brakes, tyres and springs were made for the mass the car had. Do not load it beyond the masses given here.");

    private Cautions() {}
}
