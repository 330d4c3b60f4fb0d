package kerbfolio.formula;

import kerbfolio.quantity.Unit;

/**
 * A symbol a formula declares.
 *
 * @param symbol as written in the formula
 * @param meaning in shop words
 * @param unit the unit it is filled in and printed in
 * @param each whether it stands for a list, one entry per part, axle or leg
 */
public record Declared(String symbol, String meaning, Unit unit, boolean each) {}
