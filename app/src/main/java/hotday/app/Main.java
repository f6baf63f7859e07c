package hotday.app;

import hotday.app.cli.CommandLineDoor;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** Where the program starts: hands the words of the command line to the door for people at a terminal. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        Locale.setDefault(Locale.ROOT); // decimals with a point, whatever the machine is set to
        System.exit(CommandLineDoor.run(args, utf8(FileDescriptor.out), utf8(FileDescriptor.err)));
    }

    private static PrintStream utf8(FileDescriptor stream) {
        return new PrintStream(new FileOutputStream(stream), true, StandardCharsets.UTF_8);
    }
}
