package kerbfolio.quantity;

/** A unit text this program cannot read. The message is fit to be shown. */
public final class UnknownUnit extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    UnknownUnit(String text) {
        super("unknown unit `" + text + "`" + hint(text));
    }

    private static String hint(String text) {
        // 2/0 AWG is read as the figure 2 and the rest.
        return switch (text.startsWith("/0 ") ? text.substring(3) : text) {
            case "C", "c", "f" -> "; a temperature is written in °C, °F or K (or deg C, deg F)";
            case "KG", "Kg" -> "; write kg";
            case "LB", "LBS", "Lb", "Lbs" -> "; write lb";
            case "KW" -> "; write kW";
            case "KWH", "kwh", "KWh", "kWH" -> "; write kWh";
            case "AWG", "kcmil", "MCM" -> "; a cable size is a designation and stands in a size key";
            default -> "";
        };
    }
}
