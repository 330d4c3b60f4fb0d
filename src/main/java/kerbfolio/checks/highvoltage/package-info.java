/** What a battery of more than 60 V asks of its insulation, its cases, its cables, its fuses and its people. */
@NullMarked
package kerbfolio.checks.highvoltage;

import org.jspecify.annotations.NullMarked;
