/** Every reader fed with made-up input: it reads, or it refuses with a reason; nothing else. Not shipped. */
package hotday.fuzz;
