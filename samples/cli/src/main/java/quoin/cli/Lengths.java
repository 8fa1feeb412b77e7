package quoin.cli;

import java.util.Locale;
import quoin.judge.Args;
import quoin.measure.Dimension;
import quoin.measure.LengthText;
import quoin.words.Words;

/** Amounts on the sheet: lengths in the job's own unit, one decimal of a millimetre or sixteenths of an inch. */
final class Lengths {
    private static final int SIXTEENTHS = 16;

    /** Below this an angle is said as an offset in each metre, never in degrees. */
    private static final double SMALL_RAD = 0.2;

    private final boolean inches;
    private final Words words;

    Lengths(String units, Words words) {
        this.words = words;
        this.inches = units.equals("in");
    }

    /** An adjusted length. */
    String say(double mm) {
        return inches ? LengthText.inches(mm, SIXTEENTHS) : LengthText.millimetres(mm, 1, Locale.ROOT);
    }

    /** An expanded doubt, rounded up. */
    String give(double u) {
        return words.giveOrTake(u);
    }

    /** A decided size: exactly, in mm, and in inches where the job was measured so. */
    String size(double mm) {
        String exact = words.number(mm) + " mm";
        return inches ? exact + " (" + LengthText.inches(mm, SIXTEENTHS) + ")" : exact;
    }

    /** An amount of any kind, in the unit of answers. */
    String amount(double base, Dimension dimension) {
        if (dimension == Dimension.LENGTH) {
            return say(base);
        }
        if (dimension == Dimension.ANGLE && Math.abs(base) < SMALL_RAD) {
            return words.number(1000 * StrictMath.tan(base), 1) + " " + words.text("unit.in-each-metre", Args.NONE);
        }
        return words.number(dimension.toAnswer(base), 2)
                + (dimension == Dimension.RATIO ? "" : " " + dimension.answerUnit());
    }
}
