package hotday.signals.channel;

import hotday.core.finding.Setting;

/** Channels and keys of a channel map as sentences name them. */
final class Named {
    /** The map itself. */
    static final Setting MAP = Setting.named("", "the channel map");

    /** Where nothing can be mended but by taking time from elsewhere. */
    static final Setting OTHER_TIME = new Setting("time.column", "another", "map the right time column");

    private Named() {}

    static Setting channel(ModelChannel channel) {
        return Setting.named(path(channel), channel.key());
    }

    /** A key of a channel, said so to whoever has the map open. */
    static Setting key(ModelChannel channel, String key, String inFile) {
        return Setting.named(path(channel) + "." + key, inFile);
    }

    /** A value a key of a channel could have. */
    static Setting value(ModelChannel channel, String key, String value, String inFile) {
        return new Setting(path(channel) + "." + key, value, inFile);
    }

    private static String path(ModelChannel channel) {
        return "channels." + channel.key();
    }
}
