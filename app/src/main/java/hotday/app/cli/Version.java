package hotday.app.cli;

import hotday.study.signoff.ProgramVersion;
import picocli.CommandLine;

/** What {@code --version} prints. */
final class Version implements CommandLine.IVersionProvider {
    static final String NUMBER = ProgramVersion.NUMBER;

    @Override
    public String[] getVersion() {
        return new String[] {"hotday " + NUMBER};
    }
}
