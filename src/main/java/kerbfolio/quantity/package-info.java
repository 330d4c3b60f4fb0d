/** Units, and quantities as people write them: read, converted and printed without losing what was written. */
@NullMarked
package kerbfolio.quantity;

import org.jspecify.annotations.NullMarked;
