/** The simulated print day: what happens when, and what touches what too early. */
package strikeoff.timeline;
