/** Procedures: steps for the next mechanic, derived from the car and the recorded links. */
@NullMarked
package kerbfolio.procedure;

import org.jspecify.annotations.NullMarked;
