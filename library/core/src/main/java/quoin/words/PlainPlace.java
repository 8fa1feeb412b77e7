package quoin.words;

import java.util.Optional;
import quoin.judge.Args;
import quoin.opening.At;
import quoin.opening.Corner;
import quoin.opening.Span;

/** Which sentence names the place of a reading. */
final class PlainPlace {
    private final Words words;

    PlainPlace(Words words) {
        this.words = words;
    }

    /** The place in words; the text itself where it is no place. */
    String say(String of) {
        String back = "/back";
        boolean inBack = of.endsWith(back);
        Optional<Span> span = parse(inBack ? of.substring(0, of.length() - back.length()) : of);
        if (span.isEmpty()) {
            return of;
        }
        String text = say(span.get());
        return inBack ? words.text("place.back", Args.of("place", text)) : text;
    }

    private static Optional<Span> parse(String of) {
        try {
            return Optional.of(Span.parse(of));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private String say(Span span) {
        if (span instanceof Span.Edge edge) {
            return words.text("place.edge." + edge.side().text(), Args.NONE);
        }
        if (span instanceof Span.Across across) {
            String key = across.text().startsWith("width@") ? "place.width" : "place.length";
            return words.text(key, Args.of("at", at(across.at())));
        }
        if (span instanceof Span.Diagonal diagonal) {
            return words.text("place.diagonal", ends(diagonal.from()));
        }
        if (span instanceof Span.Cross cross) {
            Args args = Args.of("corner", cross.from().text())
                    .with("side", cross.side().text());
            return words.text("place.cross", args.with("at", at(cross.at())));
        }
        if (span instanceof Span.Check check) {
            Args args = Args.of("corner", check.corner().text())
                    .with("a", check.alongWidth().text());
            return words.text("place.check", args.with("b", check.alongLength().text()));
        }
        return simple(span);
    }

    private String simple(Span span) {
        if (span instanceof Span.Angle angle) {
            return words.text("place.angle", Args.of("corner", angle.corner().text()));
        }
        if (span instanceof Span.Bow bow) {
            return words.text("place.bow", Args.of("side", bow.side().text()).with("at", at(bow.at())));
        }
        if (span instanceof Span.Fall fall) {
            return words.text("place.fall", Args.of("side", fall.side().text()));
        }
        if (span instanceof Span.Depth depth) {
            boolean middle = Corner.find(depth.place()).isEmpty();
            return words.text(middle ? "place.depth.middle" : "place.depth", Args.of("corner", depth.place()));
        }
        return span.text();
    }

    private static Args ends(Corner from) {
        return Args.of("from", from.text()).with("to", from.opposite().text());
    }

    private String at(At at) {
        String known = "at." + at.text();
        if (words.has(known)) {
            return words.text(known, Args.NONE);
        }
        return words.text(Double.isNaN(at.mm()) ? "at.fraction" : "at.distance", Args.of("at", at.text()));
    }
}
