/** Changes single places of a YAML text and leaves every other byte of it alone. */
package strikeoff.document.yaml;
