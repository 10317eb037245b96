/** Where everything lies on the cloth, in cloth coordinates. */
package strikeoff.layout;
