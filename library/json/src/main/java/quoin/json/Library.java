package quoin.json;

/** The version of the library. */
final class Library {
    static final String VERSION = "0.1.0";

    private Library() {}
}
