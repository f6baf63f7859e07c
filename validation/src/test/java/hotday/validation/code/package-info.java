/** Exported C99, compiled by gcc and run over the vectors of the Java form: the same to the last bit, and nothing undefined. */
package hotday.validation.code;
