/** One class a command; start with {@link hotday.app.cli.CommandLineDoor}. Words and numbers for people at a terminal. */
package hotday.app.cli;
