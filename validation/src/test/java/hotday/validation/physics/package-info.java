/** Closures of module physics against published examples and tables; one topic class a family. */
package hotday.validation.physics;
