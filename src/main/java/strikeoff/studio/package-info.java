/** A studio's policy: what it owns, allows and holds its plans to. */
package strikeoff.studio;
