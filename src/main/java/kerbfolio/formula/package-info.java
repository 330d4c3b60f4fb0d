/** An engineering formula written once, as text, and read five ways: number, unit, doubt, print and spreadsheet cell. */
@NullMarked
package kerbfolio.formula;

import org.jspecify.annotations.NullMarked;
