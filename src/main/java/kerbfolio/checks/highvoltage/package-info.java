<<<<<<< HEAD
/** What a battery of more than 60 V asks of its insulation, its cases, its cables, its fuses and its people. */
=======
/** What carries the voltage of the traction battery: who can touch it, what guards it, what it does when it is left alone. */
>>>>>>> 96c59eea51341abc8f0eaae2ff8d587a03c09682
@NullMarked
package kerbfolio.checks.highvoltage;

import org.jspecify.annotations.NullMarked;
