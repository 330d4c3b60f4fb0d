/** What the findings, the punch list and the waivers together say of each gate, and what to record next. */
@NullMarked
package kerbfolio.release;

import org.jspecify.annotations.NullMarked;
