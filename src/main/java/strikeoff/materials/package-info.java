/** What a run takes: what to weigh for each paste and bath, and what to buy for all of them. */
package strikeoff.materials;
