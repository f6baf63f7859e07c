/** The open recordings read through their channel maps, against what their descriptions say about them. */
package hotday.validation.signals;
