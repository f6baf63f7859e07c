/** The demo builds as whole vehicles against published figures. */
package hotday.validation.vehicle;
