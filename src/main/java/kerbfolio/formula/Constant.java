package kerbfolio.formula;

import kerbfolio.quantity.Quantity;
import kerbfolio.source.Citation;

/** A constant of physics that stands in a formula, with where it comes from. */
public record Constant(String symbol, Quantity value, Citation citation) {}
