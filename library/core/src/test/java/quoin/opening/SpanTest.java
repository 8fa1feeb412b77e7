package quoin.opening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import quoin.measure.Dimension;

/** Names of readings, as the job format has them: every form, and what is said of every other. */
class SpanTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "width@head",
                "width@foot",
                "length@left",
                "length@right",
                "width@1/2",
                "width@0.3",
                "width@600 mm",
                "length@3/4",
                "length@23 5/8 in",
                "diagonal@head-left",
                "diagonal@head-right",
                "cross@head-left:right:1/2",
                "cross@foot-right:left:600 mm",
                "cross@head-right:foot:1/3",
                "check@head-left:600 mm:800 mm",
                "check@foot-right:24 in:32 in",
                "angle@foot-left",
                "bow@left:1/2",
                "bow@head:0.25",
                "depth@middle",
                "depth@head-right",
                "fall@head",
                "fall@foot"
            })
    void roundTrip(String of) {
        Span span = Span.parse(of);
        assertThat(span.text()).isEqualTo(of);
        assertThat(Span.parse(span.text())).isEqualTo(span).hasSameHashCodeAs(span);
        assertThat(span.dimension()).isEqualTo(of.startsWith("angle") ? Dimension.ANGLE : Dimension.LENGTH);
    }

    @Test
    void kinds() {
        assertThat(Span.parse("width@head")).isEqualTo(new Span.Edge(Side.HEAD));
        assertThat(Span.parse("length@left")).isEqualTo(new Span.Edge(Side.LEFT));
        assertThat(Span.parse("width@0.5")).isEqualTo(Span.parse("width@1/2"));
        assertThat(Span.parse("width@60 cm")).isEqualTo(Span.parse("width@600 mm"));
        assertThat(Span.parse("width@1/2")).isNotEqualTo(Span.parse("length@1/2"));
        assertThat(Span.parse("width@1/2")).isNotEqualTo(Span.parse("width@600 mm"));
        Span.Across length = (Span.Across) Span.parse("length@1/2");
        assertThat(length.start()).isEqualTo(Side.HEAD);
        assertThat(length.end()).isEqualTo(Side.FOOT);
        Span.Across width = (Span.Across) Span.parse("width@1/2");
        assertThat(width.start()).isEqualTo(Side.LEFT);
        assertThat(width.end()).isEqualTo(Side.RIGHT);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "width                     | reading must be of a place such as width@head, got width",
                "height@head               | reading must be of width, length, diagonal, cross, check, angle, bow, depth"
                        + " or fall, got height@head",
                "@head                     | reading must be of width, length, diagonal, cross, check, angle, bow, depth"
                        + " or fall, got @head",
                "width@left                | width must be at head, foot, a fraction or a distance, got left",
                "length@head               | length must be at left, right, a fraction or a distance, got head",
                "width@1/2:3/4             | reading must have 1 place after @, got width@1/2:3/4",
                "diagonal@foot-left        | diagonal must start at head-left or head-right, got diagonal@foot-left",
                "diagonal@top              | corner must be head-left, head-right, foot-right or foot-left, got top",
                "cross@head-left:right     | reading must have 3 places after @, got cross@head-left:right",
                "cross@head-left:left:1/2  | cross must go to a side that does not touch its corner, got"
                        + " cross@head-left:left:1/2",
                "cross@head-left:middle:1/2| side must be head, right, foot or left, got middle",
                "check@head-left:1/2:1/4   | corner check must have distances such as 600 mm, got 1/2",
                "bow@left                  | reading must have 2 places after @, got bow@left",
                "angle@left                | corner must be head-left, head-right, foot-right or foot-left, got left",
                "depth@centre              | corner must be head-left, head-right, foot-right or foot-left, got centre",
                "fall@left                 | fall must be at head or foot, got fall@left",
                "width@0                   | fraction must be above 0 and below 1, got 0",
                "width@1                   | fraction must be above 0 and below 1, got 1",
                "width@4/3                 | fraction must be above 0 and below 1, got 4/3",
                "width@1/0                 | fraction must be above 0 and below 1, got 1/0",
                "width@1/2/3               | place must be a fraction such as 1/4 or a distance such as 600 mm, got 1/2/3",
                "width@0 mm                | distance must be above 0 mm, got 0 mm",
                "width@-5 mm               | distance must be above 0 mm, got -5 mm",
            })
    void whatIsWrong(String of, String message) {
        assertThatThrownBy(() -> Span.parse(of))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(message);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "@",
                "width@",
                "width@ ",
                "width@0/0",
                "width@.",
                "width@/",
                "width@NaN",
                "width@600",
                "width@5 kg",
                "bow@left:",
                "check@head-left::",
                "width@1e3",
                "Width@head",
                "width@head ",
                "cross@:::"
            })
    void nothingElseIsASpan(String of) {
        assertThatThrownBy(() -> Span.parse(of)).isInstanceOf(IllegalArgumentException.class);
    }

    /** Places that no name says cannot be made from parts either: geometry would be computed for another place. */
    @Test
    void whatNoNameSaysIsRefused() {
        At half = At.parse("1/2");
        assertThatThrownBy(() -> new Span.Across(Side.RIGHT, half))
                .hasMessage("across must be left for a width or head for a length, got right");
        assertThatThrownBy(() -> new Span.Across(Side.FOOT, half))
                .hasMessage("across must be left for a width or head for a length, got foot");
        assertThatThrownBy(() -> new Span.Diagonal(Corner.FOOT_RIGHT))
                .hasMessage("diagonal must start at head-left or head-right, got diagonal@foot-right");
        assertThatThrownBy(() -> new Span.Cross(Corner.HEAD_LEFT, Side.HEAD, half))
                .hasMessage("cross must go to a side that does not touch its corner, got cross@head-left:head:1/2");
        assertThatThrownBy(() -> new Span.Check(Corner.HEAD_LEFT, At.parse("600 mm"), half))
                .hasMessage("corner check must have distances such as 600 mm, got 1/2");
        assertThatThrownBy(() -> new Span.Fall(Side.RIGHT)).hasMessage("fall must be at head or foot, got fall@right");
    }

    @Test
    void placesAreOneOrTheOther() {
        assertThatThrownBy(() -> new At(Double.NaN, Double.NaN, "x"))
                .hasMessage("place must be a fraction or a distance, got x");
        assertThatThrownBy(() -> new At(0.5, 600, "x")).hasMessage("place must be a fraction or a distance, got x");
        assertThat(At.parse("1/4").on(2400)).isEqualTo(0.25);
        assertThat(At.parse("600 mm").on(2400)).isEqualTo(0.25);
        assertThat(At.parse("1/4"))
                .hasToString("1/4")
                .isEqualTo(At.parse("0.25"))
                .isNotEqualTo("1/4");
        assertThat(At.parse("1/4")).hasSameHashCodeAs(At.parse("0.25"));
    }
}
