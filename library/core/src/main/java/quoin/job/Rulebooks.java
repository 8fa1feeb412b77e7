package quoin.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import quoin.judge.Args;
import quoin.judge.Problem;
import quoin.rulebook.Rulebook;

/** Which of the given rulebooks a job is assessed by. */
public final class Rulebooks {
    private static final String PLACE = "/choose/rulebook";

    private Rulebooks() {}

    /**
     * The rulebook that a job chose: of that id, version and digest where it names them; else the newest that was in
     * force on the day the job was taken; without such a day the newest given.
     *
     * @param choose the job's choices
     * @param taken the day the job was taken, such as {@code 2026-11-02}; empty where not stated
     * @param given the rulebooks to choose from
     * @return the rulebook, or empty where none of them is it, or where two of one version say different things; see
     *     {@link #whyNone}
     */
    public static Optional<Rulebook> pick(Choices choose, String taken, List<Rulebook> given) {
        List<Rulebook> newest = newest(
                given.stream().filter(book -> isWanted(choose, taken, book)).toList());
        return newest.size() == 1 ? Optional.of(newest.get(0)) : Optional.empty();
    }

    /**
     * Why no rulebook can be picked.
     *
     * @param choose the job's choices
     * @param taken the day the job was taken; empty where not stated
     * @param given the rulebooks to choose from
     * @return the problem, at {@code /choose/rulebook}; empty exactly where {@link #pick} finds one
     */
    public static Optional<Problem> whyNone(Choices choose, String taken, List<Rulebook> given) {
        if (pick(choose, taken, given).isPresent()) {
            return Optional.empty();
        }
        List<Rulebook> named =
                given.stream().filter(book -> isNamed(choose, book)).toList();
        List<Rulebook> inForce =
                named.stream().filter(book -> isInForce(choose, taken, book)).toList();
        List<Rulebook> wanted =
                inForce.stream().filter(book -> hasDigest(choose, book)).toList();
        Args args = Args.of("got", (choose.rulebookId() + " " + choose.rulebookVersion()).strip());
        if (named.isEmpty()) {
            return Optional.of(Problem.error("no-rulebook", PLACE, args.with("known", days(given))));
        }
        if (inForce.isEmpty()) {
            Args day = args.with("taken", taken).with("known", days(named));
            return Optional.of(Problem.error("no-rulebook-in-force", PLACE, day));
        }
        if (wanted.isEmpty()) {
            Args digest = args.with("digest", choose.rulebookDigest()).with("known", digests(inForce));
            return Optional.of(Problem.error("no-rulebook-digest", PLACE + "/digest", digest));
        }
        return Optional.of(Problem.error("rulebook-ambiguous", PLACE, args.with("known", digests(newest(wanted)))));
    }

    private static List<String> days(List<Rulebook> books) {
        return books.stream().map(book -> book + " of " + book.effective()).toList();
    }

    private static List<String> digests(List<Rulebook> books) {
        return books.stream().map(book -> book + " " + book.digest()).toList();
    }

    private static boolean isWanted(Choices choose, String taken, Rulebook book) {
        return isNamed(choose, book) && isInForce(choose, taken, book) && hasDigest(choose, book);
    }

    private static boolean isNamed(Choices choose, Rulebook book) {
        return book.id().equals(choose.rulebookId()) && matches(choose.rulebookVersion(), book.version());
    }

    /** A version that is named is taken whenever it came into force. */
    private static boolean isInForce(Choices choose, String taken, Rulebook book) {
        return !choose.rulebookVersion().isEmpty()
                || taken.isEmpty()
                || book.effective().compareTo(taken) <= 0;
    }

    private static boolean hasDigest(Choices choose, Rulebook book) {
        return choose.rulebookDigest().isEmpty() || choose.rulebookDigest().equals(book.digest());
    }

    /** The newest, each digest once: more than one where two of one day and version say different things. */
    private static List<Rulebook> newest(List<Rulebook> books) {
        List<Rulebook> newest = new ArrayList<>();
        for (Rulebook book : books) {
            int order = newest.isEmpty() ? 0 : order(book, newest.get(0));
            if (order > 0) {
                newest.clear();
            }
            if (order >= 0 && newest.stream().noneMatch(other -> other.digest().equals(book.digest()))) {
                newest.add(book);
            }
        }
        return newest;
    }

    private static boolean matches(String wanted, String version) {
        return wanted.isEmpty() || wanted.equals(version);
    }

    private static int order(Rulebook a, Rulebook b) {
        int byDay = a.effective().compareTo(b.effective());
        return byDay != 0 ? byDay : compare(a.version(), b.version());
    }

    /** Versions are compared number by number; what is not a number is compared as text. */
    static int compare(String a, String b) {
        List<String> first = List.of(a.split("\\.", -1));
        List<String> second = List.of(b.split("\\.", -1));
        for (int i = 0; i < Math.max(first.size(), second.size()); i++) {
            String x = i < first.size() ? first.get(i) : "0";
            String y = i < second.size() ? second.get(i) : "0";
            boolean numbers = isNumber(x) && isNumber(y);
            int order = numbers ? Integer.compare(Integer.parseInt(x), Integer.parseInt(y)) : x.compareTo(y);
            if (order != 0) {
                return order;
            }
        }
        return 0;
    }

    private static boolean isNumber(String text) {
        return !text.isEmpty() && text.length() < 10 && text.chars().allMatch(c -> c >= '0' && c <= '9');
    }
}
