package quoin.job;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import quoin.rulebook.Rulebook;

/** Which of the given rulebooks a job is assessed by. */
public final class Rulebooks {
    private Rulebooks() {}

    /**
     * The rulebook that a job chose: of that id, version and digest where it names them; else the newest that was in
     * force on the day the job was taken; without such a day the newest given.
     *
     * @param choose the job's choices
     * @param taken the day the job was taken, such as {@code 2026-11-02}; empty where not stated
     * @param given the rulebooks to choose from
     * @return the rulebook, or empty where none of them is it
     */
    public static Optional<Rulebook> pick(Choices choose, String taken, List<Rulebook> given) {
        @Nullable Rulebook best = null;
        for (Rulebook rulebook : given) {
            boolean fits = rulebook.id().equals(choose.rulebookId())
                    && matches(choose.rulebookVersion(), rulebook.version())
                    && (choose.rulebookDigest().isEmpty()
                            || choose.rulebookDigest().equals(rulebook.digest()))
                    && (!choose.rulebookVersion().isEmpty()
                            || taken.isEmpty()
                            || rulebook.effective().compareTo(taken) <= 0);
            if (fits && (best == null || isNewer(rulebook, best))) {
                best = rulebook;
            }
        }
        return Optional.ofNullable(best);
    }

    private static boolean matches(String wanted, String version) {
        return wanted.isEmpty() || wanted.equals(version);
    }

    private static boolean isNewer(Rulebook a, Rulebook b) {
        int byDay = a.effective().compareTo(b.effective());
        return byDay != 0 ? byDay > 0 : compare(a.version(), b.version()) > 0;
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
