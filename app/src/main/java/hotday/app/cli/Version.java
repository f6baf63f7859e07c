package hotday.app.cli;

import picocli.CommandLine;

/** What {@code --version} prints. */
final class Version implements CommandLine.IVersionProvider {
    static final String NUMBER = "0.1.0";

    @Override
    public String[] getVersion() {
        return new String[] {"hotday " + NUMBER};
    }
}
