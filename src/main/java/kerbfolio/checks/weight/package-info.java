/** What the car weighs, where it weighs it, and whether plate, tyres and ledger agree with the scales. */
@NullMarked
package kerbfolio.checks.weight;

import org.jspecify.annotations.NullMarked;
