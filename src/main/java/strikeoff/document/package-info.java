/** What can be changed in a plan's text, told by its paths. */
package strikeoff.document;
