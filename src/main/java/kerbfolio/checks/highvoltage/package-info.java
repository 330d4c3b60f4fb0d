/** Whether the high-voltage system holds what it carries, breaks what it must, and keeps people away from both. */
@NullMarked
package kerbfolio.checks.highvoltage;

import org.jspecify.annotations.NullMarked;
