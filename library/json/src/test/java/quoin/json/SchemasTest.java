package quoin.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static quoin.json.Examples.changed;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.FieldSource;
import quoin.job.Assessment;
import quoin.job.Impact;
import quoin.job.ImpactTotals;
import quoin.job.Job;
import quoin.parts.Parts;
import quoin.rulebook.Rulebook;

/** Every document we show or write is valid by its schema, and the schema refuses what the reader refuses. */
class SchemasTest {
    static final List<String> FORMATS = Schemas.FORMATS;

    private static final SchemaRegistry REGISTRY =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);

    private static List<Error> errors(String format, String document) {
        return REGISTRY.getSchema(Schemas.text(format)).validate(document, InputFormat.JSON);
    }

    @ParameterizedTest
    @FieldSource("FORMATS")
    void everySchemaIsASchema(String format) {
        Schema meta = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(com.networknt.schema.SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
        assertThat(meta.validate(Schemas.text(format), InputFormat.JSON)).isEmpty();
        assertThat(Schemas.text(format)).contains("\"" + format + "\"").doesNotContain("\r");
    }

    @Test
    void anotherFormatIsRefused() {
        assertThatThrownBy(() -> Schemas.text("quoin-job/2"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("quoin-job/1")
                .hasMessageEndingWith("got quoin-job/2");
    }

    @Test
    void theExamplesAreValid() {
        assertThat(errors(JobDocument.FORMAT, Examples.JOB)).isEmpty();
        assertThat(errors(RulebookDocument.FORMAT, Examples.RULEBOOK)).isEmpty();
        assertThat(errors(PartsDocument.FORMAT, Examples.PARTS)).isEmpty();
    }

    @Test
    void theDemoIsValid() {
        for (String format : List.of(JobDocument.FORMAT, RulebookDocument.FORMAT, PartsDocument.FORMAT)) {
            assertThat(Examples.demo(format))
                    .isNotEmpty()
                    .allSatisfy(text -> assertThat(errors(format, text)).isEmpty());
        }
    }

    @Test
    void whatIsWrittenIsValid() {
        assertThat(errors(JobDocument.FORMAT, JobDocument.write(Examples.job(Examples.JOB))))
                .isEmpty();
        assertThat(errors(RulebookDocument.FORMAT, RulebookDocument.write(Examples.rulebook(Examples.RULEBOOK))))
                .isEmpty();
        assertThat(errors(PartsDocument.FORMAT, PartsDocument.write(Examples.parts(Examples.PARTS))))
                .isEmpty();
    }

    @Test
    void everyAnswerIsValid() {
        Parts parts = Examples.parts(Examples.PARTS);
        Rulebook example = Examples.rulebook(Examples.RULEBOOK);
        assertAnswer(Examples.job(Examples.JOB), example, parts);
        assertAnswer(Examples.job(Examples.JOB), example, Parts.NONE);
        for (String text : Examples.demo(JobDocument.FORMAT)) {
            for (String book : Examples.demo(RulebookDocument.FORMAT)) {
                assertAnswer(Examples.job(text), Examples.rulebook(book), parts);
            }
        }
    }

    private static void assertAnswer(Job job, Rulebook rulebook, Parts parts) {
        String answer = AssessmentDocument.write(Assessment.of(job, rulebook, parts));
        assertThat(errors(AssessmentDocument.FORMAT, answer)).as(answer).isEmpty();
    }

    @Test
    void everyLineOfAnImpactIsValid() {
        // a handle that stands 55 mm into the frame fails by any rulebook
        String free = changed(Examples.JOB, "\"out\": \"55 mm\"", "\"out\": \"1 mm\"");
        Rulebook before = Examples.rulebook(Examples.RULEBOOK);
        Rulebook after = Examples.rulebook(changed(Examples.RULEBOOK, "\"atMost\": \"9 mm\"", "\"atMost\": \"2 mm\""));
        Rulebook small = Examples.rulebook(
                Examples.RULEBOOK.replace("\"1800 mm\"", "\"180 mm\"").replace("\"3000 mm\"", "\"300 mm\""));
        ImpactTotals totals = ImpactTotals.NONE.plusRefused();
        for (Rulebook other : List.of(before, after, small)) {
            Impact impact = Impact.of(Examples.job(free), before, other, Examples.parts(Examples.PARTS));
            totals = totals.plus(impact);
            String line = ImpactDocument.write(impact);
            assertThat(errors(ImpactDocument.FORMAT, line)).as(line).isEmpty();
        }
        assertThat(totals.count(Impact.Change.UNCHANGED)).isEqualTo(1);
        assertThat(totals.count(Impact.Change.NEWLY_REFUSED)).isEqualTo(1);
        String last = ImpactDocument.write(totals, before, after);
        assertThat(errors(ImpactDocument.FORMAT, last)).as(last).isEmpty();
        assertThat(last).contains("\"jobs\":4,\"unchanged\":1,", "\"refused\":1,\"flips\":{\"undecided-fail\":2}");
        Read<Job> read = JobDocument.read(Examples.utf8("{ \"id\": \"a\" }"));
        for (String id : List.of(read.id(), "")) {
            assertThat(errors(ImpactDocument.FORMAT, ImpactDocument.refused(id, read.problems())))
                    .isEmpty();
        }
        assertThat(errors(ImpactDocument.FORMAT, changed(last, "\"totals\"", "\"total\"")))
                .isNotEmpty();
    }

    @Test
    void aRefusalIsValid() {
        Read<Job> read = JobDocument.read(Examples.utf8("{ \"id\": \"a\" }"));
        assertThat(errors(AssessmentDocument.FORMAT, AssessmentDocument.refused(read.id(), read.problems())))
                .isEmpty();
        Read<Job> nothing = JobDocument.read(Examples.utf8(""));
        assertThat(errors(AssessmentDocument.FORMAT, AssessmentDocument.refused(nothing.id(), nothing.problems())))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"units\": \"mm\"|\"units\": \"cm\"",
                "\"grade\": \"survey\"|\"colour\": \"red\"",
                "\"slope\": \"12 deg\"|\"slope\": 12",
                "\"slope\": \"12 deg\"|\"slope\": \"12 mm\"",
                "\"fit\": \"recess\"|\"fit\": \"face\"",
                "\"read\": 142|\"read\": \"NaN\"",
                "\"read\": 142|\"read\": []",
                "\"depth@head-left\"|\"depth\"",
                "\"substrate\": \"timber\"|\"substrate\": \"wood\"",
                "\"role\": \"light\"|\"role\": \"window\"",
                "\"id\": \"reading-room-2\"|\"id\": \"Reading Room\"",
                "{ \"u\": \"0.4 mm\" }|{ \"u\": \"0.4 mm\", \"k\": 2 }",
                "{ \"u\": \"0.4 mm\" }|{ \"U\": \"0.4 mm\" }",
                "\"site.headroom\"|\"headroom\""
            })
    void whatTheReaderRefusesTheSchemaRefuses(String passage, String wrong) {
        String text = changed(Examples.JOB, passage, wrong);
        assertThat(JobDocument.read(Examples.utf8(text)).value()).isEmpty();
        assertThat(errors(JobDocument.FORMAT, text)).isNotEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"fromEdge\": \"25 mm\"|\"fromEdge\": 25",
                "\"upTo\": \"3000 mm\"|\"upTo\": 3000",
                "\"drive-m\": \"4 mm\"|\"drive-m\": \"4 ell\"",
                "\"id\": \"frame.length\"|\"id\": \"frame.height\"",
                "\"probability\": 0.99|\"probability\": 0.5",
                "\"more\": [ { \"amount\": \"350 mm\", |\"more\": [ { ",
                "\"within\": \"6 mm\"|\"width\": \"6 mm\"",
                "\"into\": \"reveal\"|\"into\": \"sky\"",
                "\"mark\": \"1 mm\",|``"
            })
    void aRulebookThatTheReaderRefusesTheSchemaRefuses(String passage, String wrong) {
        String text = changed(Examples.RULEBOOK, passage, wrong);
        assertThat(RulebookDocument.read(Examples.utf8(text)).value()).isEmpty();
        assertThat(errors(RulebookDocument.FORMAT, text)).isNotEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"torque\": \"9 N.m\"|\"torque\": \"9 N\"",
                "\"turns\": 30|\"turns\": \"30 rpm\"",
                "\"mayTurn\": true|\"mayTurn\": \"yes\"",
                "\"basis\": \"characteristic\"|\"basis\": \"good\"",
                "\"kind\": \"assumption\"|\"kind\": \"rumour\"",
                "\"hole\": \"4.1 mm\"|\"hole\": 4.1",
                "\"version\": \"1.0.0\",|``"
            })
    void partsThatTheReaderRefusesTheSchemaRefuses(String passage, String wrong) {
        String text = changed(Examples.PARTS, passage, wrong);
        assertThat(PartsDocument.read(Examples.utf8(text)).value()).isEmpty();
        assertThat(errors(PartsDocument.FORMAT, text)).isNotEmpty();
    }
}
