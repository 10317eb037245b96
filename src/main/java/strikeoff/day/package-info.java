/** The print day worked: what happens when, by whom, and how the films dry meanwhile. */
package strikeoff.day;
