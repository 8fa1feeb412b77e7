package quoin.cli;

/** The command line asks for something that cannot be done; the message says what would be right. */
final class BadUse extends Exception {
    private static final long serialVersionUID = 1L;

    BadUse(String message) {
        super(message);
    }
}
