package hotday.study.signoff;

/** Which program made a document. */
public final class ProgramVersion {
    public static final String NUMBER = "0.1.0";

    private ProgramVersion() {}
}
