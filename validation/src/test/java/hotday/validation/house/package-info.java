/** The house rules of the code itself: which room may see which, who writes to disk, and the picture in ARCHITECTURE.md. */
package hotday.validation.house;
