package quoin.judge;

/** When a figure can be known: from the survey alone, once sizes are decided, or because the caller declares it. */
public enum Stage {
    /** Known from the readings; needs no size. */
    SURVEY,
    /** Known once the sizes are decided. */
    ORDER,
    /** Handed in by the caller with its doubt. */
    DECLARED
}
