package quoin.job;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import quoin.measure.Estimate;
import quoin.opening.Held;
import quoin.opening.Opening;
import quoin.opening.OpeningFigures;
import quoin.opening.Side;
import quoin.opening.Survey;
import quoin.rulebook.Rulebook;

/**
 * What the readings of a job give before any size is decided: the opening and its figures. Of the rules it knows only how a
 * frame is held. Not safe for use by many threads.
 */
final class Surveyed {
    private final Job job;
    private final Opening opening;
    private final Held held;
    private final Map<String, Estimate> figures;

    private Surveyed(Job job, Opening opening, Held held) {
        this.job = job;
        this.opening = opening;
        this.held = held;
        Map<String, Estimate> all = new LinkedHashMap<>(OpeningFigures.survey(
                opening, Side.find(job.choose().rollerAt()).orElse(Side.HEAD), held));
        all.putAll(OpeningFigures.againstNominal(opening, job.nominalWidthMm(), job.nominalLengthMm()));
        this.figures = Collections.unmodifiableMap(all);
    }

    /** As the job was read. */
    static Surveyed of(Job job, Rulebook rulebook) {
        OpeningFacts facts = job.opening();
        return of(job, rulebook, new Survey(facts.readings(), facts.straightWithinMm(), facts.finish()));
    }

    /** As it was read, or may be. */
    static Surveyed of(Job job, Rulebook rulebook, Survey survey) {
        return new Surveyed(job, Opening.of(survey), held(rulebook));
    }

    /** The same opening under other rules. */
    Surveyed by(Rulebook rulebook) {
        Held other = held(rulebook);
        return other.equals(held) ? this : new Surveyed(job, opening, other);
    }

    private static Held held(Rulebook rulebook) {
        String hold = rulebook.frame().hold().text();
        return Side.find(hold).map(Held::to).orElse(Held.TO_HEAD);
    }

    Opening opening() {
        return opening;
    }

    Held held() {
        return held;
    }

    Map<String, Estimate> figures() {
        return figures;
    }
}
