package quoin.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quoin.judge.Problem;
import quoin.judge.Source;
import quoin.measure.Amount;
import quoin.measure.Dimension;
import quoin.measure.Doubt;
import quoin.rulebook.Quota;
import quoin.rulebook.Rulebook;
import quoin.rulebook.Stated;

/** Numbers with what they rest on, named tables, and how good a reading must be, as documents. */
class RulebookNumbersTest {
    private static final String BOOK = """
            { "format": "quoin-rulebook/1", "id": "b", "version": "1", "effective": "2026-01-01",
              "decide": { "rule": "simple" },
              "tables": [ { "id": "t", "amounts": [
                { "upTo": "1 m", "amount": { "value": "8 mm", "limits": "1 mm" } }, { "upTo": "3 m", "amount": "10 mm" } ],
                "source": { "kind": "standard", "ref": "r", "verifiedOn": "2026-01-02", "reviewBy": "2027-01-02" } } ],
              "sizes": [
                { "id": "frame.width", "of": "fit.width", "source": { "kind": "practice" }, "less": [
                  { "amount": { "value": "3 mm", "id": "plate", "u": "0.2 mm", "because": "rolled",
                                "source": { "kind": "tested" } } } ] },
                { "id": "frame.length", "of": "fit.length", "source": { "kind": "practice" }, "less": [
                  { "choice": "drive", "amounts": { "drive-m": { "value": "4 mm", "U": "0.4 mm", "k": 2 } } } ] } ],
              "bounds": [
                { "id": "x", "figure": "opening.bow.left", "within": { "table": "t", "by": "fit.length" },
                  "source": { "kind": "practice" } },
                { "id": "y", "figure": "fit.width", "atLeast": { "value": "500 mm", "limits": "2 mm" },
                  "source": { "kind": "practice" } } ],
              "survey": { "needs": [ "headTowards", { "of": "width@head", "u": "1 mm" } ] },
              "sources": { "asks": [ "verifiedOn" ] } }
            """;

    private static Read<Rulebook> read(String text) {
        return RulebookDocument.read(text.getBytes(StandardCharsets.UTF_8));
    }

    private static Amount mm(double mm) {
        return new Amount(mm, Dimension.LENGTH);
    }

    @Test
    void readsWhatANumberRestsOn() {
        Read<Rulebook> read = read(BOOK);
        assertThat(read.problems()).isEmpty();
        Rulebook book = read.value().orElseThrow();
        assertThat(book.sizes().get(0).less().get(0).quota())
                .isEqualTo(new Quota.Fixed(new Stated(
                        "plate",
                        mm(3),
                        List.of(Doubt.standard(0.2, Dimension.LENGTH)),
                        "rolled",
                        Source.of(Source.Kind.TESTED, ""))));
        assertThat(((Quota.ByChoice) book.sizes().get(1).less().get(0).quota()).numbers())
                .isEqualTo(Map.of("drive-m", Stated.of(mm(4)).withDoubt(Doubt.expanded(0.4, 2, Dimension.LENGTH))));
        Quota.Banded banded = (Quota.Banded) book.bounds().get(0).within().get(0);
        assertThat(banded).isEqualTo(book.tables().get(0).by("fit.length"));
        assertThat(banded.bands().get(0).number().source().reviewBy()).isEqualTo("2027-01-02");
        assertThat(banded.bands().get(0).number().standardUncertainty()).isEqualTo(1 / Math.sqrt(3));
        assertThat(book.survey().goodTo()).isEqualTo(Map.of("width@head", mm(1)));
        assertThat(book.survey().needs()).containsExactly("headTowards", "width@head");
        assertThat(book.sourceAsks()).containsExactly("verifiedOn");
        String written = RulebookDocument.write(book);
        assertThat(read(written).value()).contains(book);
        assertThat(RulebookDocument.write(read(written).value().orElseThrow())).isEqualTo(written);
    }

    // each fault on its own: what is replaced, by what, and the code and place of the one problem
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"table\": \"t\"|\"table\": \"tt\"|unknown-value|/bounds/0/within/table|t",
                "\"by\": \"fit.length\"|\"by\": \"fit.lengt\"|unknown-figure|/bounds/0/within/by|",
                "\"by\": \"fit.length\"|\"by\": \"gap.least\"|order-figure-in-band|/bounds/0/within/by|",
                "\"figure\": \"opening.bow.left\"|\"figure\": \"opening.corner.head-left.angle\"|wrong-dimension|/bounds/0/within/table|",
                "\"limits\": \"2 mm\"|\"limit\": \"2 mm\"|unknown-field|/bounds/1/atLeast/limit|limits",
                "\"U\": \"0.4 mm\", \"k\": 2|\"U\": \"0.4 mm\"|missing-field|/sizes/1/less/0/amounts/drive-m|one of u, limits, or U with k",
                "\"limits\": \"2 mm\"|\"limits\": \"2 kg\"|wrong-dimension|/bounds/1/atLeast/limits|1503 mm",
                "\"u\": \"1 mm\" }|\"u\": \"0 mm\" }|out-of-range|/survey/needs/1/u|",
                "\"of\": \"width@head\"|\"of\": \"slope\"|unknown-value|/survey/needs/1/of|a place such as width@head",
                "\"verifiedOn\" ]|\"verified\" ]|unknown-value|/sources/asks/0|verifiedOn, reviewBy",
                "\"upTo\": \"3 m\"|\"upTo\": \"1 m\"|band-overlap|/tables/0/amounts/1/upTo|",
                "\"upTo\": \"3 m\"|\"upTo\": \"0.5 m\"|band-order|/tables/0/amounts/1/upTo|",
            })
    void eachFaultHasItsPlaceAndWhatWouldBeRight(String from, String to, String code, String pointer, String right) {
        assertThat(BOOK).contains(from);
        Read<Rulebook> read = read(BOOK.replaceFirst(java.util.regex.Pattern.quote(from), to));
        assertThat(read.value()).isEmpty();
        List<Problem> errors = read.problems().stream()
                .filter(problem -> problem.severity() == Problem.Severity.ERROR)
                .toList();
        Problem problem = errors.get(0);
        assertThat(problem.code() + " " + problem.pointer()).isEqualTo(code + " " + pointer);
        assertThat(problem.line()).isPositive();
        assertThat(problem.column()).isPositive();
        if (right != null) {
            assertThat(problem.args().get("right")).contains(right);
        }
    }
}
