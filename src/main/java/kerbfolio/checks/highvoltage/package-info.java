<<<<<<< HEAD
/** What a battery of more than 60 V asks of its insulation, its cases, its cables, its fuses and its people. */
=======
/** Whether the high-voltage system holds what it carries, breaks what it must, and keeps people away from both. */
>>>>>>> ff356fae69e73396382ebf045874af5020f81bbf
@NullMarked
package kerbfolio.checks.highvoltage;

import org.jspecify.annotations.NullMarked;
