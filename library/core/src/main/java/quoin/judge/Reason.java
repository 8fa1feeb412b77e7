package quoin.judge;

import java.util.Locale;

/** Why a finding is undecided. */
public enum Reason {
    /** The doubt reaches across the limit. */
    DOUBT,
    /** A fact or a declared value is not known, or no room computes the figure yet. */
    NOT_VERIFIED,
    /** The readings do not determine the figure. */
    NOT_DETERMINED,
    /** The readings cannot all be right. */
    READINGS_DISAGREE,
    /** The survey lacks something that is needed. */
    INCOMPLETE,
    /** The tolerance is narrower than the doubt; no value could pass. */
    TOO_NARROW,
    /** The odds are within their own numerical error of the threshold. */
    NUMERICAL;

    /** {@return the reason as documents write it} */
    public String text() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
