/**
 * What recorded columns mean to the model: channel maps, units, one time base, and what to think of every sample. Start
 * with {@link hotday.signals.channel.ChannelMap}; the result is a {@link hotday.signals.channel.Recording} with its
 * findings. How files are cut into cells is known in {@code hotday.signals.log}; what the channels are good for, in
 * {@code hotday.study}. The map's keys: docs/channel-map.md.
 */
package hotday.signals.channel;
