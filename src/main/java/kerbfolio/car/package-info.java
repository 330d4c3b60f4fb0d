/** The car as one thing: what is written about it turned into terms, and the values several trades share as workings. */
@NullMarked
package kerbfolio.car;

import org.jspecify.annotations.NullMarked;
