package quoin.cli;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import quoin.job.Assessment;
import quoin.job.Case;
import quoin.job.Job;
import quoin.job.Rulebooks;
import quoin.json.CaseDocument;
import quoin.json.JobDocument;
import quoin.json.Read;
import quoin.judge.Args;
import quoin.judge.Problem;
import quoin.parts.Parts;
import quoin.rulebook.Coverage;
import quoin.rulebook.Rulebook;
import quoin.words.Words;

/**
 * A folder of rulebooks with its cases, those in the folder {@code cases} too: which cases hold, and what no case touches. Not
 * safe for use by many threads.
 */
final class CheckFolder {
    private static final Words WORDS = Words.in(Locale.ENGLISH);

    private final Problems documents = new Problems();
    private final Shelf shelf;
    private final Map<Rulebook, Tally> tallies = new LinkedHashMap<>();
    private final Problems results = new Problems();

    /** What became of the cases of one rulebook. */
    private static final class Tally {
        private final String file;
        private Coverage coverage;
        private int hold;
        private int fail;

        Tally(String file, Rulebook rulebook) {
            this.file = file;
            this.coverage = Coverage.of(rulebook);
        }
    }

    private CheckFolder(List<String> files) throws BadUse {
        this.shelf = Shelf.of(files, documents);
        shelf.files().forEach((file, rulebook) -> tallies.putIfAbsent(rulebook, new Tally(file, rulebook)));
    }

    static int run(String folder, PrintStream out, PrintStream err) throws BadUse {
        List<String> files = new ArrayList<>(Files.in(folder));
        files.addAll(Files.in(Files.path(folder).resolve("cases").toString()));
        CheckFolder check = new CheckFolder(files);
        for (String file : Shelf.naming(files, CaseDocument.FORMAT)) {
            check.one(file);
        }
        check.documents.print(err);
        if (check.documents.refuse()) {
            return Main.BAD;
        }
        if (check.tallies.isEmpty()) {
            throw new BadUse(folder + " holds no rulebook, name a folder that does");
        }
        check.print(out);
        return check.results.refuse() ? Main.FAIL : Main.PASS;
    }

    private void one(String file) throws BadUse {
        byte[] bytes = Files.bytes(file);
        Map<String, Optional<Job>> jobs = new LinkedHashMap<>();
        Read<Case> probe = CaseDocument.read(bytes, name -> {
            jobs.put(name, Optional.empty());
            return Optional.empty();
        });
        for (String name : List.copyOf(jobs.keySet())) {
            jobs.put(name, job(Files.beside(file, name)));
        }
        Read<Case> read =
                jobs.isEmpty() ? probe : CaseDocument.read(bytes, name -> jobs.getOrDefault(name, Optional.empty()));
        documents.add(file, read.problems());
        if (read.value().isPresent()) {
            run(file, bytes, read.value().get());
        }
    }

    private Optional<Job> job(String file) throws BadUse {
        if (!java.nio.file.Files.isRegularFile(Files.path(file))) {
            return Optional.empty();
        }
        Read<Job> read = JobDocument.read(Files.bytes(file));
        documents.add(file, read.problems());
        return read.value();
    }

    private void run(String file, byte[] bytes, Case given) {
        List<Problem> problems = new ArrayList<>();
        Rulebooks.whyNone(given.choose(), given.job().taken(), shelf.rulebooks())
                .ifPresent(problem -> problems.add(Spot.locate(bytes, inCase(problem))));
        Optional<Rulebook> rulebook = Rulebooks.pick(given.choose(), given.job().taken(), shelf.rulebooks());
        Optional<Parts> parts = Chosen.parts(given.job(), shelf, bytes, problems);
        documents.add(file, problems);
        if (rulebook.isEmpty() || parts.isEmpty()) {
            return;
        }
        Assessment assessment = Assessment.of(given.job(), rulebook.get(), parts.get());
        Tally tally = tallies.computeIfAbsent(rulebook.get(), book -> new Tally(file, book));
        List<Problem> against = given.against(assessment).stream()
                .map(problem -> Spot.locate(bytes, problem))
                .toList();
        results.add(file, against);
        tally.coverage = Case.covered(assessment, tally.coverage);
        if (against.isEmpty()) {
            tally.hold++;
        } else {
            tally.fail++;
        }
    }

    /** The case names its rulebook at its own top. */
    private static Problem inCase(Problem problem) {
        return new Problem(problem.code(), problem.severity(), "/rulebook", 1, 1, problem.args());
    }

    private void print(PrintStream out) throws BadUse {
        results.print(out);
        for (Map.Entry<Rulebook, Tally> entry : tallies.entrySet()) {
            Tally tally = entry.getValue();
            if (tally.hold + tally.fail == 0) {
                out.print(WORDS.text(
                                "check.no-case",
                                Args.of("rulebook", entry.getKey().toString())) + "\n");
                continue;
            }
            byte[] bytes = Files.bytes(tally.file);
            List<Problem> untouched = tally.coverage.untouched().stream()
                    .map(problem -> Spot.locate(bytes, problem))
                    .toList();
            Problems said = new Problems();
            said.add(tally.file, untouched);
            said.print(out);
            Args args = Args.of("rulebook", entry.getKey().toString())
                    .with("hold", tally.hold)
                    .with("cases", tally.hold + tally.fail)
                    .with("untouched", untouched.size())
                    .with("places", tally.coverage.size());
            out.print(WORDS.text("check.rulebook", args) + "\n");
        }
    }
}
