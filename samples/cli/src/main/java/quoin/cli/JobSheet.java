package quoin.cli;

import java.util.Locale;
import java.util.stream.Collectors;
import quoin.job.Assessment;
import quoin.job.Job;
import quoin.judge.Args;
import quoin.judge.Caution;
import quoin.opening.Finish;
import quoin.words.LengthStyle;
import quoin.words.Words;

/** The job sheet: all that a fitter and an office need to read of one assessment, in 80 columns. */
final class JobSheet {
    private final Assessment assessment;
    private final Words words;
    private final Lengths lengths;
    private final Page page = new Page();

    private JobSheet(Assessment assessment, Words words) {
        this.assessment = assessment;
        this.words = words;
        this.lengths = new Lengths(assessment.job().units(), words);
    }

    /** The sheet of an assessment. */
    static String of(Assessment assessment) {
        JobSheet sheet = new JobSheet(assessment, words(assessment));
        sheet.banner();
        sheet.standing();
        new OpeningPart(assessment, sheet.words, sheet.lengths).on(sheet.page);
        new SizesPart(assessment, sheet.words, sheet.lengths).on(sheet.page);
        new HolesPart(assessment, sheet.lengths).on(sheet.page);
        new ChecksPart(assessment, sheet.words, sheet.lengths).on(sheet.page);
        new RetakePart(assessment, sheet.words).on(sheet.page);
        new UnseenPart(assessment, sheet.words).on(sheet.page);
        sheet.cautions();
        sheet.notChecked();
        sheet.page.rule('=');
        return sheet.page.toString();
    }

    private static Words words(Assessment assessment) {
        Words words = Words.in(Locale.ENGLISH);
        return assessment.job().units().equals("in") ? words.with(LengthStyle.INCHES) : words;
    }

    private void banner() {
        Job job = assessment.job();
        page.rule('=');
        page.ends(say(Headline.order(assessment)), job.id());
        if (Headline.isQuote(assessment)) {
            page.text(0, say("headline.quote"));
        }
        double count = Headline.missingReadings(assessment);
        page.text(0, words.text(Headline.survey(assessment), Args.of("n", count)));
        page.rule('-');
        if (!job.place().isEmpty()) {
            page.text(0, job.place());
        }
        String rules = "Rules " + assessment.rulebook().id() + " "
                + assessment.rulebook().version();
        String parts = assessment.parts().id().isEmpty()
                ? ""
                : ", parts " + assessment.parts().id() + " "
                        + assessment.parts().version();
        page.text(0, rules + parts + (job.taken().isEmpty() ? "" : ", measured " + job.taken()));
        assessment.probability().ifPresent(p -> page.text(0, "All limits together: " + words.odds(p) + "."));
    }

    private void standing() {
        page.heading("WHERE YOU STAND");
        page.text(2, "Underneath, facing the head, looking up; left and right are your own.");
        page.text(2, say("head." + assessment.job().opening().headTowards().text()));
        if (assessment.job().opening().markedOnSite()) {
            page.text(2, say("head.marked-on-site"));
        }
        Finish.State finish = assessment.job().opening().finish().state();
        page.text(2, say("finish." + finish.name().toLowerCase(Locale.ROOT)));
    }

    private void cautions() {
        if (assessment.cautions().isEmpty()) {
            return;
        }
        page.heading("TAKE CARE");
        for (Caution caution : assessment.cautions()) {
            String mark = caution.severity() == Caution.Severity.NOTE ? "  - " : "  ! ";
            page.hanging(mark, words.of(caution));
        }
        page.text(2, say("sheet.advice"));
    }

    private void notChecked() {
        if (assessment.notChecked().isEmpty()) {
            return;
        }
        page.heading("NOT CHECKED, BECAUSE NOBODY ASKED");
        page.text(
                2,
                assessment.notChecked().stream()
                                .map(room -> say("room." + room))
                                .collect(Collectors.joining("; ")) + ".");
    }

    private String say(String key) {
        return words.text(key, Args.NONE);
    }
}
