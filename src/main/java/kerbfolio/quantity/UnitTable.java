package kerbfolio.quantity;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The unit symbols the shop's papers use, each with the spellings people type. Factors are exact by definition
 * (international yard and pound, 1959; BIPM SI Brochure, 9th edition; NIST SP 811, 2008, Appendix B.8) unless the line
 * says otherwise.
 */
final class UnitTable {
    /** symbol : SI definition : other spellings. A definition is a factor and units above it, or "base". */
    private static final String TABLE = """
            kg   : base : kgs kilogram kilograms
            m    : base : metre metres meter meters
            s    : base : sec second seconds
            A    : base : amp amps ampere amperes
            K    : base : kelvin
            g    : 0.001 kg : gram grams
            t    : 1000 kg : tonne tonnes
            lb   : 0.45359237 kg : lbs lbm pound pounds
            oz   : 0.028349523125 kg : ounce ounces
            mm   : 0.001 m : millimetre millimetres millimeter millimeters
            cm   : 0.01 m :
            km   : 1000 m :
            µm   : 1e-6 m : um micron microns
            in   : 0.0254 m : inch inches
            ft   : 0.3048 m : foot feet
            mi   : 1609.344 m : mile miles
            ms   : 0.001 s :
            µs   : 1e-6 s : us
            min  : 60 s : minute minutes
            h    : 3600 s : hr hour hours
            d    : 86400 s : day days
            L    : 0.001 m3 : l litre litres liter liters
            mL   : 1e-6 m3 : ml cc
            gal  : 0.003785411784 m3 : gallon gallons
            qt   : 0.000946352946 m3 : quart quarts
            mph  : 0.44704 m/s :
            N    : 1 kg*m/s2 : newton newtons
            kN   : 1000 kg*m/s2 :
            lbf  : 4.4482216152605 kg*m/s2 :
            kgf  : 9.80665 kg*m/s2 : kp
            Pa   : 1 kg/m/s2 :
            kPa  : 1000 kg/m/s2 :
            MPa  : 1e6 kg/m/s2 :
            bar  : 1e5 kg/m/s2 :
            mbar : 100 kg/m/s2 :
            psi  : 6894.757293168361 kg/m/s2 :
            inHg : 3386.389 kg/m/s2 :
            J    : 1 kg*m2/s2 : joule joules
            kJ   : 1000 kg*m2/s2 :
            MJ   : 1e6 kg*m2/s2 :
            Wh   : 3600 kg*m2/s2 :
            kWh  : 3.6e6 kg*m2/s2 :
            W    : 1 kg*m2/s3 : watt watts
            kW   : 1000 kg*m2/s3 :
            hp   : 745.6998715822702 kg*m2/s3 : bhp
            PS   : 735.49875 kg*m2/s3 :
            V    : 1 kg*m2/s3/A : volt volts
            mV   : 0.001 kg*m2/s3/A :
            kV   : 1000 kg*m2/s3/A :
            mA   : 0.001 A :
            µA   : 1e-6 A : uA
            kA   : 1000 A :
            Ah   : 3600 A*s :
            mAh  : 3.6 A*s :
            Ω    : 1 kg*m2/s3/A2 : ohm ohms Ohm
            µΩ   : 1e-6 kg*m2/s3/A2 : uohm µohm
            mΩ   : 0.001 kg*m2/s3/A2 : mohm mOhm milliohm milliohms
            kΩ   : 1000 kg*m2/s3/A2 : kohm kOhm kilohm kilohms
            MΩ   : 1e6 kg*m2/s3/A2 : Mohm MOhm megohm megohms
            GΩ   : 1e9 kg*m2/s3/A2 : Gohm GOhm
            F    : 1 A2*s4/kg/m2 : farad farads
            mF   : 0.001 A2*s4/kg/m2 :
            µF   : 1e-6 A2*s4/kg/m2 : uF
            nF   : 1e-9 A2*s4/kg/m2 :
            H    : 1 kg*m2/s2/A2 :
            mH   : 0.001 kg*m2/s2/A2 :
            µH   : 1e-6 kg*m2/s2/A2 : uH
            Hz   : 1 /s :
            kHz  : 1000 /s :
            rpm  : 0.10471975511965977 /s : r/min
            rad  : 1 1 :
            °    : 0.017453292519943295 1 : deg degree degrees
            %    : 0.01 1 : percent
            """;

    /** Whole texts that do not read as a product of symbols: the torque spellings of the trade, speeds, sizes. */
    private static final Map<String, String> SPELLINGS = spellings(
            "N·m: Nm newton-metre newton-metres",
            "kN·m: kNm",
            "lbf·ft: lb-ft lb·ft lb*ft lbft ft-lb ft-lbs ft·lb ftlb lb.ft ft.lb lbf-ft ft-lbf ft·lbf lbfft lbf.ft ft.lbf",
            "lbf·in: lb-in lb·in lbin in-lb in-lbs in·lb inlb lbf-in in-lbf in·lbf lb.in in.lb lbfin",
            "kgf·m: kgf-m kgfm kgm",
            "km/h: kph kmh km/hr",
            "Ω/V: ohm/volt");

    private static final Map<String, Unit> UNITS = read();

    private UnitTable() {}

    static Map<String, Unit> units() {
        return UNITS;
    }

    /** The spelling this project prints, for one of the whole-text spellings people type. */
    static String preferred(String text) {
        return SPELLINGS.getOrDefault(text, text);
    }

    private static Map<String, String> spellings(String... lines) {
        var map = new LinkedHashMap<String, String>();
        for (String line : lines) {
            int colon = line.indexOf(':');
            for (String other : line.substring(colon + 1).strip().split(" ")) {
                map.put(other, line.substring(0, colon));
            }
        }
        return Map.copyOf(map);
    }

    private static Map<String, Unit> read() {
        var units = new LinkedHashMap<String, Unit>();
        for (String line : TABLE.split("\n")) {
            String[] columns = line.split(" *: *", -1);
            Unit unit = define(columns[0], columns[1], units);
            units.put(unit.text(), unit);
            for (String spelling : columns[2].isEmpty() ? new String[0] : columns[2].split(" ")) {
                units.put(spelling, unit);
            }
        }
        temperatures(units);
        return Map.copyOf(units);
    }

    /** The two scales with an offset; they take part in no product. */
    private static void temperatures(Map<String, Unit> units) {
        Dim kelvin = new Dim(0, 0, 0, 0, 2);
        var celsius = new Unit("°C", kelvin, 1, 273.15);
        var fahrenheit = new Unit("°F", kelvin, 5.0 / 9.0, 459.67 * 5.0 / 9.0);
        for (String spelling : new String[] {"°C", "deg C", "degC", "℃"}) {
            units.put(spelling, celsius);
        }
        for (String spelling : new String[] {"°F", "deg F", "degF", "℉"}) {
            units.put(spelling, fahrenheit);
        }
    }

    private static Unit define(String symbol, String definition, Map<String, Unit> known) {
        if (definition.equals("base")) {
            return new Unit(symbol, base(symbol), 1, 0);
        }
        String[] parts = definition.split(" ", 2);
        Dim dim = UnitText.dimension(parts[1], known);
        return new Unit(symbol, dim, Double.parseDouble(parts[0]), 0);
    }

    private static Dim base(String symbol) {
        return switch (symbol) {
            case "kg" -> new Dim(2, 0, 0, 0, 0);
            case "m" -> new Dim(0, 2, 0, 0, 0);
            case "s" -> new Dim(0, 0, 2, 0, 0);
            case "A" -> new Dim(0, 0, 0, 2, 0);
            default -> new Dim(0, 0, 0, 0, 2);
        };
    }
}
