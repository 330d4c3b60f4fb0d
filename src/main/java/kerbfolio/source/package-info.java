/** The published references: every formula and every limit says where it comes from. */
@NullMarked
package kerbfolio.source;

import org.jspecify.annotations.NullMarked;
