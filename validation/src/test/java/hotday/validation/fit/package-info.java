/** The fit alone: certified regression problems, and whether its stated widths are right. */
package hotday.validation.fit;
