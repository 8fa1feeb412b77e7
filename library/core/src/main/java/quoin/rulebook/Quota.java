package quoin.rulebook;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import quoin.judge.Source;
import quoin.measure.Amount;

/** An amount that a rule states: fixed, by bands of a figure, or by choice of a part. Values of it are immutable. */
public sealed interface Quota {
    /**
     * One amount, whatever the opening.
     *
     * @param amount the amount
     * @param source where it comes from
     */
    record Fixed(Amount amount, Source source) implements Quota {
        /** Checks that nothing is missing. */
        public Fixed {
            Objects.requireNonNull(amount, "amount");
            Objects.requireNonNull(source, "source");
        }
    }

    /**
     * An amount for each band of a figure. A band reaches from above the one before it (the first from above zero) up to
     * its own upper edge, which belongs to it. Above the last band there is no amount.
     *
     * @param by the figure or size that picks the band, at its estimate
     * @param bands the bands, in ascending order
     */
    record Banded(String by, List<Band> bands) implements Quota {
        /** Copies the list. */
        public Banded {
            Checks.named(by, "by");
            bands = List.copyOf(bands);
        }
    }

    /**
     * One band.
     *
     * @param upTo its upper edge, which belongs to it
     * @param amount the amount in it
     */
    record Band(Amount upTo, Amount amount) {
        /** Checks that nothing is missing. */
        public Band {
            Objects.requireNonNull(upTo, "upTo");
            Objects.requireNonNull(amount, "amount");
        }
    }

    /**
     * An amount for each part that may be chosen.
     *
     * @param choice the kind of part, such as {@code drive}
     * @param amounts the amount for each part, by the part's name, in the order of the document
     */
    record ByChoice(String choice, Map<String, Amount> amounts) implements Quota {
        /** Copies the map. */
        public ByChoice {
            Checks.named(choice, "choice");
            amounts = Collections.unmodifiableMap(new LinkedHashMap<>(amounts));
        }
    }

    /**
     * One amount without a source of its own.
     *
     * @param amount the amount
     * @return the quota
     */
    static Quota fixed(Amount amount) {
        return new Fixed(amount, Source.UNSTATED);
    }
}
