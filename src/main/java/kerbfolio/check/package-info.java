/** What a check is: a question, findings judged against a cited limit, and the gate they hold. */
@NullMarked
package kerbfolio.check;

import org.jspecify.annotations.NullMarked;
