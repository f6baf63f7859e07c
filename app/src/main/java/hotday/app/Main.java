package hotday.app;

import hotday.app.cli.CommandLineDoor;

/** Where the program starts: hands the words of the command line to the door for people at a terminal. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        System.exit(CommandLineDoor.run(args, System.out, System.err));
    }
}
