/** What carries the voltage of the traction battery: who can touch it, what guards it, what it does when it is left alone. */
@NullMarked
package kerbfolio.checks.highvoltage;

import org.jspecify.annotations.NullMarked;
