/** Shows pages to a browser on this machine, and to nothing else. */
package strikeoff.cli.serve;
