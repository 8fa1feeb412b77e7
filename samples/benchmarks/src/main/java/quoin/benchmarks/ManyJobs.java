package quoin.benchmarks;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Invented jobs, one a line, to try on very many what must hold for any number: openings of many sizes, more or less square,
 * with up to twelve readings by a tape, some of them misread or missing, and facts of the site that are known or not. The
 * same seed gives the same jobs.
 */
public final class ManyJobs {
    private static final double TAPE_U = 0.8;
    private static final double OUT_OF_PLACE = 1.5;
    private static final double LEAST = 600;
    private static final double MORE = 2450;
    private static final double MISREAD = 0.03;
    private static final double MISSING = 0.02;
    private static final double UNKNOWN = 0.05;

    /** Corners clockwise from head-left; a point lies that part of the way from one corner to another. */
    private record Place(int from, int to, double part) {}

    private record Between(String of, Place one, Place other) {}

    private static final List<Between> ALWAYS = List.of(
            corners("width@head", 0, 1),
            corners("width@foot", 3, 2),
            corners("length@left", 0, 3),
            corners("length@right", 1, 2),
            corners("diagonal@head-left", 0, 2),
            corners("diagonal@head-right", 1, 3));

    private static final List<Between> SOMETIMES = List.of(
            new Between("width@1/2", new Place(0, 3, 0.5), new Place(1, 2, 0.5)),
            new Between("length@1/2", new Place(0, 1, 0.5), new Place(3, 2, 0.5)),
            new Between("width@1/4", new Place(0, 3, 0.25), new Place(1, 2, 0.25)),
            new Between("width@3/4", new Place(0, 3, 0.75), new Place(1, 2, 0.75)),
            new Between("cross@head-left:right:1/2", new Place(0, 0, 0), new Place(1, 2, 0.5)),
            new Between("cross@head-right:left:1/2", new Place(1, 1, 0), new Place(0, 3, 0.5)));

    private final SplittableRandom random;
    private final double[][] corners = new double[4][2];

    ManyJobs(long seed) {
        this.random = new SplittableRandom(seed);
    }

    private static Between corners(String of, int one, int other) {
        return new Between(of, new Place(one, one, 0), new Place(other, other, 0));
    }

    /**
     * Prints jobs.
     *
     * @param args how many, 1000 if left out
     */
    public static void main(String[] args) {
        int jobs = args.length > 0 ? Integer.parseInt(args[0]) : 1000;
        ManyJobs many = new ManyJobs(1);
        PrintStream out = new PrintStream(System.out, false, StandardCharsets.UTF_8);
        for (int i = 1; i <= jobs; i++) {
            out.print(many.next(i));
        }
        out.flush();
    }

    /** The next job as a line. */
    String next(int number) {
        corners[1][0] = LEAST + MORE * random.nextDouble();
        corners[2][1] = LEAST + MORE * random.nextDouble();
        corners[2][0] = corners[1][0] + outOfPlace();
        corners[3][0] = outOfPlace();
        corners[3][1] = corners[2][1] + outOfPlace();
        return """
                {"format":"quoin-job/1","id":"job-%d","taken":"2026-11-02","grade":"survey","units":"mm",\
                "instruments":{"tape":{"kind":"tape","accuracyClass":"II","end":"hook","step":"1 mm",\
                "each":[{"u":"%s mm"}]}},\
                "opening":{"fit":"recess","slope":"12 deg","headTowards":"ridge","markedOnSite":true,\
                "straightWithin":"%d mm","finish":{"state":"finished"},"readings":[%s]},\
                "site":{"role":"light","glazed":"yes","glassMakerAsked":"%s","structure":"%s","below":"floor",\
                "platform":"tower"},\
                "choose":{"rulebook":{"id":"heron-frame"},"parts":"heron-parts","fabric":"shade-a","drive":"drive-m",\
                "roller":{"at":"head","drive":"right"},"cable":{"leaves":"right"}}}
                """.formatted(
                        number,
                        TAPE_U,
                        random.nextInt(3),
                        String.join(",", readings()),
                        happens(UNKNOWN) ? "unknown" : "yes",
                        happens(UNKNOWN) ? "unknown" : "rafter");
    }

    private List<String> readings() {
        List<Between> taken = new ArrayList<>(ALWAYS);
        taken.removeIf(reading -> happens(MISSING));
        taken.addAll(SOMETIMES.subList(0, random.nextInt(SOMETIMES.size() + 1)));
        List<String> all = new ArrayList<>();
        for (Between reading : taken) {
            double length = distance(point(reading.one()), point(reading.other()));
            double slip = happens(MISREAD) ? 10 : 0;
            all.add("{\"of\":\"%s\",\"read\":%d,\"by\":\"tape\"}"
                    .formatted(reading.of(), StrictMath.round(length + TAPE_U * normal() + slip)));
        }
        return all;
    }

    private double[] point(Place place) {
        double[] a = corners[place.from()];
        double[] b = corners[place.to()];
        return new double[] {a[0] + place.part() * (b[0] - a[0]), a[1] + place.part() * (b[1] - a[1])};
    }

    private static double distance(double[] a, double[] b) {
        return StrictMath.hypot(b[0] - a[0], b[1] - a[1]);
    }

    private double outOfPlace() {
        return OUT_OF_PLACE * normal();
    }

    /** Nearly normal: the sum of twelve equally likely numbers. */
    private double normal() {
        double sum = -6;
        for (int i = 0; i < 12; i++) {
            sum += random.nextDouble();
        }
        return sum;
    }

    private boolean happens(double probability) {
        return random.nextDouble() < probability;
    }
}
