package quoin.json;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import quoin.job.Case;
import quoin.job.Choices;
import quoin.job.Job;
import quoin.judge.Verdict;
import quoin.measure.Amount;
import quoin.measure.Dimension;

/** A case beside rules as a document: {@code quoin-case/1}. */
public final class CaseDocument {
    /** The name of the format. */
    public static final String FORMAT = "quoin-case/1";

    private static final List<String> VERDICTS = List.of("pass", "undecided", "fail");

    private CaseDocument() {}

    /**
     * Reads a case.
     *
     * @param json the text in UTF-8
     * @param jobs the job of a file name, for cases that name their job; empty where there is none
     * @return the case, or every problem of the text
     */
    public static Read<Case> read(byte[] json, Function<String, Optional<Job>> jobs) {
        return Documents.read(json, fields -> read(fields, jobs), value -> List.of());
    }

    private static Optional<Case> read(Fields in, Function<String, Optional<Job>> jobs) {
        in.format(FORMAT);
        String id = in.id("id");
        String title = in.text("title", "");
        Optional<Job> job =
                in.require("job", "a job, or the name of a file with one").flatMap(v -> job(in, v, jobs));
        Optional<Choices> rulebook = job.flatMap(j -> choose(in, j));
        if (job.isEmpty()) {
            in.object("rulebook", CaseDocument::rulebook);
        }
        in.require("expect", "an object with verdict, sizes or findings");
        Optional<Expected> expected = in.object("expect", CaseDocument::expected);
        if (id.isEmpty() || rulebook.isEmpty() || expected.isEmpty()) {
            return Optional.empty();
        }
        return in.build(() -> new Case(
                id,
                title,
                job.orElseThrow(),
                rulebook.get(),
                expected.get().verdict(),
                expected.get().sizes(),
                expected.get().findings()));
    }

    private static Optional<Job> job(Fields in, Node value, Function<String, Optional<Job>> jobs) {
        if (value.kind() == Node.Kind.OBJECT) {
            return in.object(value, fields -> new JobReader(fields).job());
        }
        String file = in.words(value, "a job, or the name of a file with one");
        Optional<Job> job = file.isEmpty() ? Optional.empty() : jobs.apply(file);
        if (job.isEmpty() && !file.isEmpty()) {
            in.report().error("no-job", value, file, "the name of a file with a job");
        }
        return job;
    }

    private static Optional<Choices> choose(Fields in, Job job) {
        Choices own = job.choose();
        Optional<Node> stated = in.find("rulebook");
        return stated.isEmpty()
                ? Optional.of(own)
                : in.object("rulebook", CaseDocument::rulebook)
                        .map(pinned -> new Choices(
                                pinned.rulebookId(),
                                pinned.rulebookVersion(),
                                pinned.rulebookDigest(),
                                own.partsId(),
                                own.parts(),
                                own.rollerAt(),
                                own.rollerDrive(),
                                own.cableLeaves()));
    }

    private static Optional<Choices> rulebook(Fields in) {
        String id = in.id("id");
        String version = in.text("version", "");
        String digest = in.text("digest", "");
        return id.isEmpty()
                ? Optional.empty()
                : Optional.of(new Choices(id, version, digest, "", Map.of(), "", "", ""));
    }

    private record Expected(Optional<Verdict> verdict, Map<String, Amount> sizes, Map<String, Verdict> findings) {}

    private static Optional<Expected> expected(Fields in) {
        Optional<Verdict> verdict = in.find("verdict").flatMap(value -> verdict(in, value));
        Map<String, Amount> sizes = new LinkedHashMap<>();
        in.find("sizes").ifPresent(all -> {
            object(in, all, "an object of sizes by name");
            all.fields().forEach((size, field) -> {
                String id = in.id(size, all.key(size));
                in.anyAmount(field.value(), Dimension.LENGTH)
                        .filter(amount -> !id.isEmpty())
                        .ifPresent(amount -> sizes.put(id, amount));
            });
        });
        Map<String, Verdict> findings = new LinkedHashMap<>();
        in.find("findings").ifPresent(all -> {
            object(in, all, "an object of verdicts by clause");
            all.fields()
                    .forEach((clause, field) ->
                            verdict(in, field.value()).ifPresent(expected -> findings.put(clause, expected)));
        });
        return Optional.of(new Expected(verdict, sizes, findings));
    }

    private static void object(Fields in, Node value, String right) {
        if (value.kind() != Node.Kind.OBJECT) {
            in.report().error("wrong-type", value, value.shown(), right);
        }
    }

    private static Optional<Verdict> verdict(Fields in, Node value) {
        String text = in.oneOf(value, VERDICTS, "");
        return text.isEmpty() ? Optional.empty() : Optional.of(Verdict.valueOf(text.toUpperCase(Locale.ROOT)));
    }
}
