package quoin.words;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import quoin.judge.Args;
import quoin.judge.Caution;
import quoin.judge.Margin;
import quoin.judge.Odds;
import quoin.judge.Problem;
import quoin.judge.Reason;
import quoin.judge.Retake;
import quoin.judge.Step;
import quoin.judge.Verdict;
import quoin.measure.Dimension;
import quoin.opening.Suspect;

/**
 * The message catalogue: sentences for the codes of an answer, and plain words for odds, margins and places.
 *
 * <p>There is one catalogue so far, English; every other locale falls back to it. A code without a sentence is shown as
 * the code with its arguments, never refused. Immutable and safe for use by many threads.
 */
public final class Words {
    private static final Words ENGLISH = new Words(Locale.ENGLISH, LengthStyle.MILLIMETRES, load("words.properties"));

    private final Locale locale;
    private final LengthStyle lengths;
    private final Map<String, String> patterns;
    private final PlainPlace places = new PlainPlace(this);

    private Words(Locale locale, LengthStyle lengths, Map<String, String> patterns) {
        this.locale = locale;
        this.lengths = lengths;
        this.patterns = patterns;
    }

    /**
     * The words for a locale; English where there are none of its own.
     *
     * @param locale whom the words are for
     * @return the catalogue
     */
    public static Words in(Locale locale) {
        Objects.requireNonNull(locale, "locale");
        return ENGLISH;
    }

    /**
     * The same words with margins, doubts and slips said in another unit.
     *
     * @param lengths how small lengths are said
     * @return the catalogue
     */
    public Words with(LengthStyle lengths) {
        return new Words(locale, Objects.requireNonNull(lengths, "lengths"), patterns);
    }

    private static Map<String, String> load(String name) {
        Properties properties = new Properties();
        try (InputStream in = Words.class.getResourceAsStream(name)) {
            properties.load(new InputStreamReader(Objects.requireNonNull(in, name), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        Map<String, String> map = new TreeMap<>();
        properties.stringPropertyNames().forEach(key -> map.put(key, properties.getProperty(key)));
        return Collections.unmodifiableMap(map);
    }

    /** {@return the locale that the sentences are really in} */
    public Locale locale() {
        return locale;
    }

    /** {@return every key that has a sentence, sorted} */
    public Set<String> keys() {
        return patterns.keySet();
    }

    /**
     * Whether there is a sentence.
     *
     * @param key the kind and the code, such as {@code reason.doubt}
     * @return whether the catalogue has it
     */
    public boolean has(String key) {
        return patterns.containsKey(key);
    }

    /**
     * The sentence of a key, filled.
     *
     * @param key the kind and the code, such as {@code reason.doubt}
     * @param args what fills it
     * @return the sentence; the key with its arguments where there is none
     */
    public String text(String key, Args args) {
        String pattern = patterns.get(key);
        if (pattern == null) {
            return args.asMap().isEmpty() ? key : key + " " + args;
        }
        return Template.fill(pattern, args.asMap());
    }

    /**
     * What is wrong in a document and what would be right.
     *
     * @param problem the problem
     * @return the sentence, without its place
     */
    public String of(Problem problem) {
        String place = problem.pointer().isEmpty() ? text("place.document", Args.NONE) : problem.pointer();
        return Lines.clean(text("problem." + problem.code(), withPlace(problem.args(), "pointer", place)));
    }

    /**
     * The line that goes to standard error: {@code FILE:LINE:COLUMN: what is wrong, what would be right}.
     *
     * @param file the file as the caller named it
     * @param problem the problem
     * @return the line, without an end of line
     */
    public String line(String file, Problem problem) {
        String warning =
                problem.severity() == Problem.Severity.WARNING ? text("problem-is-warning", Args.NONE) + " " : "";
        return Lines.clean(file) + ":" + problem.line() + ":" + problem.column() + ": " + warning + of(problem);
    }

    /**
     * How something came about.
     *
     * @param step the step
     * @return the sentence
     */
    public String of(Step step) {
        Args args = readable(step.args());
        String key = "step." + step.code();
        boolean one = step.args()
                .get("readings")
                .filter(r -> r instanceof List<?> list && list.size() == 1)
                .isPresent();
        if (one && has(key + "-alone")) {
            return text(key + "-alone", args);
        }
        for (String name : List.of("mode", "fact")) {
            String variant = key + "." + step.args().get(name).orElse("");
            if (has(variant)) {
                return text(variant, args);
            }
        }
        return text(key, args);
    }

    /** Figures by their names, places in words, and no "once". */
    private Args readable(Args args) {
        Args out = Args.NONE;
        for (Map.Entry<String, Object> arg : args.asMap().entrySet()) {
            String name = arg.getKey();
            if (arg.getValue() instanceof Double number) {
                out = readable(out, name, number);
            } else if (arg.getValue() instanceof String text) {
                out = out.with(name, readable(name, text));
            } else if (arg.getValue() instanceof List<?> list) {
                out = out.with(
                        name, list.stream().map(text -> place(text.toString())).toList());
            }
        }
        return out;
    }

    private Args readable(Args out, String name, double number) {
        return switch (name) {
            case "times" -> number == 1 ? out : out.with(name, number);
            case "statistic", "critical", "bow", "least" -> out.with(name, number(number, 1));
            default -> out.with(name, number);
        };
    }

    private String readable(String name, String text) {
        return switch (name) {
            case "figure", "by" -> figure(text);
            case "of", "reading", "what" -> has("survey." + text) ? text("survey." + text, Args.NONE) : place(text);
            case "clause" -> clause(text);
            default -> text;
        };
    }

    /**
     * The name of a check in words.
     *
     * @param id the clause of a finding
     * @return the words; the id itself where it is a clause of a rulebook
     */
    public String clause(String id) {
        return has("clause." + id) ? text("clause." + id, Args.NONE) : id;
    }

    /**
     * The name of a figure in words.
     *
     * @param id the figure as documents write it
     * @return the words; the id itself where there are none
     */
    public String figure(String id) {
        int at = id.indexOf('@');
        if (id.startsWith("gap.") && at > 0) {
            Args args = Args.of("side", id.substring("gap.".length(), at));
            return text("figure.gap-at", args.with("place", id.substring(at + 1)));
        }
        return has("figure." + id) ? text("figure." + id, Args.NONE) : id;
    }

    /**
     * Why a finding is undecided.
     *
     * @param reason the reason
     * @return the sentence
     */
    public String of(Reason reason) {
        return text("reason." + reason.text(), Args.NONE);
    }

    /**
     * What to take care of.
     *
     * @param caution the caution
     * @return the sentence
     */
    public String of(Caution caution) {
        return text("caution." + caution.code(), rounded(caution.args()));
    }

    private Args rounded(Args args) {
        Args out = args;
        for (Map.Entry<String, Object> arg : args.asMap().entrySet()) {
            out = arg.getValue() instanceof Double number ? out.with(arg.getKey(), number(number, 1)) : out;
        }
        return out;
    }

    /**
     * A verdict in a word.
     *
     * @param verdict the verdict
     * @return the word
     */
    public String of(Verdict verdict) {
        return text("verdict." + verdict.text(), Args.NONE);
    }

    /**
     * What to read again, with what, how well, and what that is worth.
     *
     * @param retake the request
     * @return the sentence
     */
    public String of(Retake retake) {
        Args args =
                Args.of("places", retake.readings().stream().map(this::place).toList());
        args = retake.by().isEmpty() ? args : args.with("by", retake.by());
        args = retake.times() == 1 ? args : args.with("times", (double) retake.times());
        boolean isLength = retake.readings().stream().noneMatch(of -> of.startsWith("angle@"));
        if (isLength && Double.isFinite(retake.u()) && retake.u() > 0) {
            args = args.with("within", lengths.down(2 * retake.u()));
        }
        String sentence = text("retake", args);
        return retake.settles() >= 0 && retake.settles() <= 1
                ? sentence + text("retake.settles", Args.of("percent", StrictMath.floor(retake.settles() * 100)))
                : sentence;
    }

    /**
     * A probability in plain words, such as {@code 1 in 20 against}.
     *
     * @param odds the probability
     * @return the words
     */
    public String of(Odds odds) {
        return odds(odds.value());
    }

    /**
     * A probability in plain words, such as {@code as good as certain: 2 in 1000 against}; rounded to the cautious side.
     *
     * @param probability the probability that something holds, 0 to 1
     * @return the words; NaN is not known
     */
    public String odds(double probability) {
        PlainOdds.Said said = PlainOdds.say(probability);
        return text(said.key(), said.args());
    }

    /**
     * What there is to spare, such as {@code 3 mm to spare, give or take 1½ mm}: to the nearest half, with the doubt expanded
     * by two and rounded up. Angles are said as an offset in each metre.
     *
     * @param margin the margin
     * @return the words
     */
    public String of(Margin margin) {
        boolean angle = margin.dimension() == Dimension.ANGLE;
        double value = angle
                ? 1000 * StrictMath.tan(margin.value())
                : margin.dimension().widthToAnswer(margin.value());
        double give = 2 * (angle ? 1000 * margin.u() : Math.abs(span(margin)));
        String amount = amount(margin.dimension(), Math.abs(value));
        boolean beyond = value < 0 && !amount.startsWith("0 ");
        Args args = Args.of("amount", amount);
        if (give > 0) {
            args = args.with("give", doubt(margin.dimension(), give));
        }
        return text(beyond ? "margin.over" : "margin.spare", args);
    }

    private String amount(Dimension dimension, double value) {
        return dimension == Dimension.LENGTH
                ? lengths.nearest(value)
                : Numbers.nearestHalf(value) + " " + unit(dimension);
    }

    private String doubt(Dimension dimension, double give) {
        return dimension == Dimension.LENGTH ? lengths.up(give) : Numbers.halfUp(give) + " " + unit(dimension);
    }

    private String unit(Dimension dimension) {
        return dimension == Dimension.ANGLE ? text("unit.in-each-metre", Args.NONE) : dimension.answerUnit();
    }

    private static double span(Margin margin) {
        Dimension dimension = margin.dimension();
        return dimension.toAnswer(margin.u()) - dimension.toAnswer(0);
    }

    /**
     * How far a corner is out of square, as an offset over a leg: never degrees.
     *
     * @param departureRad the corner's angle less a right angle, in rad
     * @param legMm the length of the leg in mm
     * @param corner the corner as documents write it
     * @return the words, such as {@code 4 mm out over the 2.4 m leg at foot-right}
     */
    public String outOver(double departureRad, double legMm, String corner) {
        double offset = Math.abs(StrictMath.sin(departureRad) * legMm);
        Args args = Args.of("offset", lengths.nearest(offset)).with("leg", Numbers.rounded(legMm / 1000, 1));
        return text("out-over", args.with("corner", corner));
    }

    /**
     * What a misreading could have been without anything here showing it.
     *
     * @param of the reading as documents write it
     * @param detectableMm the least slip that would have been noticed, in mm; NaN or infinite where none would
     * @return the sentence
     */
    public String unseen(String of, double detectableMm) {
        Args args = Args.of("place", place(of));
        return Double.isFinite(detectableMm)
                ? text("unseen", args.with("slip", lengths.wholeUp(detectableMm)))
                : text("unseen.any", args);
    }

    /**
     * How large a slip may be without anything showing it.
     *
     * @param detectableMm the least slip that would have been noticed, in mm; NaN or infinite where none would
     * @return the size, rounded up; or that there is no bound
     */
    public String slip(double detectableMm) {
        return Double.isFinite(detectableMm)
                ? text("unseen.size", Args.of("slip", lengths.wholeUp(detectableMm)))
                : text("unseen.size.any", Args.NONE);
    }

    /**
     * What slips that nobody notices do to the opening.
     *
     * @param widthMm to its width, in mm
     * @param lengthMm to its length, in mm
     * @param angleRad to a corner's angle, in rad
     * @return the sentence, the angle as an offset in each metre
     */
    public String unseenEffect(double widthMm, double lengthMm, double angleRad) {
        return text(
                "unseen.effect",
                Args.of("width", lengths.wholeUp(widthMm))
                        .with("length", lengths.wholeUp(lengthMm))
                        .with("offset", LengthStyle.MILLIMETRES.wholeUp(1000 * StrictMath.tan(angleRad))));
    }

    /**
     * A slip that would explain a disagreement.
     *
     * @param slip the slip
     * @return the sentence
     */
    public String of(Suspect.Slip slip) {
        Args args = Args.of("place", place(slip.reading()));
        args = Double.isFinite(slip.by()) ? args.with("by", lengths.whole(Math.abs(slip.by()))) : args;
        args = args.with("way", text(slip.by() < 0 ? "slip.too-short" : "slip.too-long", Args.NONE));
        return slip.looksLike().isEmpty()
                ? text("slip", args)
                : text("slip", args.with("like", text("slip." + slip.looksLike(), Args.NONE)));
    }

    /**
     * The place of a reading in words.
     *
     * @param of the place as documents write it, such as {@code width@1/4}
     * @return the words; the text itself where it names no place
     */
    public String place(String of) {
        return places.say(of);
    }

    /**
     * A number as people read it: at most six significant digits, no trailing zeros.
     *
     * @param value the number
     * @return its text; NaN and infinities are unknown
     */
    public String number(double value) {
        return Numbers.plain(value);
    }

    /**
     * A number rounded to some decimals, halves away from zero, no trailing zeros.
     *
     * @param value the number, finite
     * @param decimals how many decimals, 0 to 6
     * @return its text
     */
    public String number(double value, int decimals) {
        if (!(decimals >= 0 && decimals <= 6)) {
            throw new IllegalArgumentException("decimals must be 0 to 6, got " + decimals);
        }
        return Double.isFinite(value) ? Numbers.rounded(value, decimals) : Numbers.plain(value);
    }

    /**
     * The expanded doubt of a length (twice the standard uncertainty), rounded up.
     *
     * @param u the standard uncertainty, 0 or more
     * @return the text, such as {@code 1½ mm}
     */
    public String giveOrTake(double u) {
        return Double.isFinite(u) ? lengths.up(2 * u) : Numbers.plain(u);
    }

    private static Args withPlace(Args args, String name, String value) {
        return args.get(name).isPresent() ? args : args.with(name, value);
    }
}
