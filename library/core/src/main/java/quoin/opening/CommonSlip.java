package quoin.opening;

import java.util.Locale;

/** Slips that people make on a tape. Common practice, no source. */
enum CommonSlip {
    WHOLE_10_MM(10),
    WHOLE_100_MM(100),
    WHOLE_1000_MM(1000),
    BURNT_INCH(25.4),
    SIX_FOR_NINE(3),
    ONE_FOR_SEVEN(6),
    THREE_FOR_EIGHT(5),
    SWAPPED_DIGITS(9),
    SWAPPED_DIGITS_90(90);

    private final double mm;

    CommonSlip(double mm) {
        this.mm = mm;
    }

    double mm() {
        return mm;
    }

    String text() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Whether the digits that were read allow it; a slip of whole tens always may be. */
    boolean fits(double observed) {
        long read = Math.round(observed);
        long last = read % 10;
        return switch (this) {
            case SIX_FOR_NINE -> last == 6 || last == 9;
            case ONE_FOR_SEVEN -> last == 1 || last == 7;
            case THREE_FOR_EIGHT -> last == 3 || last == 8;
            case SWAPPED_DIGITS -> Math.abs(read / 10 % 10 - last) == 1;
            case SWAPPED_DIGITS_90 -> Math.abs(read / 100 % 10 - read / 10 % 10) == 1;
            default -> true;
        };
    }
}
