package quoin.parts;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import quoin.measure.Dimension;

/**
 * What a side of the opening is made of, as far as somebody found out. Immutable and safe for use by many threads.
 *
 * @param kind what it is
 * @param thickness how thick it is, in mm
 * @param board how thick the board in front of it is, in mm
 * @param timbers where timbers lie behind the board
 * @param known how it was found out, such as {@code probe}; empty where nobody said
 * @param tested pulls that were tested on the spot
 */
public record Substrate(
        Kind kind, Declared thickness, Declared board, List<Timber> timbers, String known, List<Pull> tested) {
    /** What a side can be made of. */
    public enum Kind {
        /** Solid timber. */
        TIMBER,
        /** Board fixed over timbers. */
        BOARD_ON_TIMBER,
        /** Board without anything known behind it. */
        BOARD,
        /** Plasterboard. */
        PLASTERBOARD,
        /** Brick, block or concrete. */
        MASONRY,
        /** Steel. */
        STEEL,
        /** Whatever it is, its hold was tested on the spot. */
        TESTED,
        /** Nobody found out. */
        UNKNOWN;

        private final String text = name().toLowerCase(Locale.ROOT).replace('_', '-');

        /** {@return the kind as documents write it} */
        public String text() {
            return text;
        }

        /**
         * The kind of that name.
         *
         * @param text the name as documents write it
         * @return the kind, or empty where there is none of that name
         */
        public static Optional<Kind> find(String text) {
            for (Kind kind : values()) {
                if (kind.text.equals(text)) {
                    return Optional.of(kind);
                }
            }
            return Optional.empty();
        }
    }

    /**
     * One timber behind a board.
     *
     * @param atMm where its centre lies along the side, in mm
     * @param widthMm how wide it is, in mm, above 0
     * @param uMm the standard uncertainty of where it lies, in mm; NaN where nobody said
     */
    public record Timber(double atMm, double widthMm, double uMm) {
        /** Refuses numbers out of range. */
        public Timber {
            if (!Double.isFinite(atMm)) {
                throw new IllegalArgumentException("at must be a finite number, got " + atMm + " mm");
            }
            if (!(widthMm > 0) || Double.isInfinite(widthMm)) {
                throw new IllegalArgumentException("width must be above 0 mm and finite, got " + widthMm + " mm");
            }
            if (uMm < 0 || Double.isInfinite(uMm)) {
                throw new IllegalArgumentException("u must be 0 mm or more and finite, got " + uMm + " mm");
            }
            atMm = atMm + 0.0;
            uMm = uMm + 0.0;
        }
    }

    /** Nobody found out. */
    public static final Substrate UNKNOWN = of(Kind.UNKNOWN);

    /** Refuses numbers of the wrong kind; copies the lists. */
    public Substrate {
        Objects.requireNonNull(kind, "kind");
        thickness.require("thickness", Dimension.LENGTH);
        board.require("board", Dimension.LENGTH);
        timbers = List.copyOf(timbers);
        Objects.requireNonNull(known, "known");
        tested = List.copyOf(tested);
    }

    /**
     * A side of which only the kind is known.
     *
     * @param kind what it is
     * @return the substrate
     */
    public static Substrate of(Kind kind) {
        Declared unknown = Declared.unknown(Dimension.LENGTH);
        return new Substrate(kind, unknown, unknown, List.of(), "", List.of());
    }
}
