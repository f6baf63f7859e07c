/** The command for refrigerant properties against reference tables, published charts and its own equations. */
package hotday.validation.property;
