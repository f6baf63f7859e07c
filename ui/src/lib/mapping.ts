import type { ChannelTaken, MapWish, RunMap } from '../api/proofTypes';

type Channels = readonly ChannelTaken[];

export const atColumn = (channels: Channels, position: number): ChannelTaken | undefined =>
  channels.find((c) => c.position === position);

export const constants = (channels: Channels): Channels => channels.filter((c) => c.position === null);

/** A column is taken for a channel, or for none with ""; where that channel stood before it is free again. */
export function taken(channels: Channels, position: number, channel: string): Channels {
  const rest = channels.filter((c) => c.position !== position && c.channel !== channel);
  return channel === '' ? rest : [...rest, { channel, position, unit: null, constant: null }];
}

export function inUnitOf(channels: Channels, position: number, unit: string): Channels {
  return channels.map((c) => (c.position === position ? { ...c, unit: unit === '' ? null : unit } : c));
}

/** One value for the whole run instead of a column; an empty one leaves the channel out. */
export function held(channels: Channels, channel: string, constant: string): Channels {
  const rest = channels.filter((c) => c.channel !== channel);
  return constant === '' ? rest : [...rest, { channel, position: null, unit: null, constant }];
}

export const wishOf = (version: string, { time, channels, facts }: Pick<RunMap, 'time' | 'channels' | 'facts'>): MapWish => ({
  version,
  time,
  channels: channels.map(({ channel, position, unit, constant }) => ({ channel, position, unit, constant })),
  facts,
});
