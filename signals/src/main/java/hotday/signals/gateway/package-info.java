/**
 * The translation between two networks, and what is wrong with it before it is flashed. Start with
 * {@link hotday.signals.gateway.TranslationSheet}, which is what was typed, and
 * {@link hotday.signals.gateway.GatewayCheck}, which lays it beside the descriptions of the networks. Keys, relations and
 * limits: docs/network.md.
 */
package hotday.signals.gateway;
