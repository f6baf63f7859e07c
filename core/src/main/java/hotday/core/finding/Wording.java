package hotday.core.finding;

/** How settings are named to a person. */
@FunctionalInterface
public interface Wording {
    /** To somebody who has the file open. */
    Wording FILE = Setting::inFile;

    String of(Setting setting);
}
