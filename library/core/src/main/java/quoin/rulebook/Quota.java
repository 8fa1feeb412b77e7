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
     * @param number the amount with what it rests on
     */
    record Fixed(Stated number) implements Quota {
        /** Checks that nothing is missing. */
        public Fixed {
            Objects.requireNonNull(number, "number");
        }

        /**
         * One amount with its source.
         *
         * @param amount the amount
         * @param source where it comes from
         */
        public Fixed(Amount amount, Source source) {
            this(Stated.of(amount).withBecause("", source));
        }

        /** {@return the amount} */
        public Amount amount() {
            return number.amount();
        }

        /** {@return where it comes from; unstated where the clause's source holds} */
        public Source source() {
            return number.source();
        }
    }

    /**
     * An amount for each band of a figure. A band reaches from above the one before it (the first from above zero) up to
     * its own upper edge, which belongs to it. Above the last band there is no amount.
     *
     * @param by the figure or size that picks the band, at its estimate
     * @param bands the bands, in ascending order
     * @param table the named table of the rulebook that they are; empty where they stand in the clause itself
     */
    record Banded(String by, List<Band> bands, String table) implements Quota {
        /** Copies the list. */
        public Banded {
            Checks.named(by, "by");
            bands = List.copyOf(bands);
            Objects.requireNonNull(table, "table");
        }

        /**
         * Bands that stand in the clause itself.
         *
         * @param by the figure or size that picks the band, at its estimate
         * @param bands the bands, in ascending order
         */
        public Banded(String by, List<Band> bands) {
            this(by, bands, "");
        }
    }

    /**
     * One band.
     *
     * @param upTo its upper edge, which belongs to it
     * @param number the amount in it, with what it rests on
     */
    record Band(Amount upTo, Stated number) {
        /** Checks that nothing is missing. */
        public Band {
            Objects.requireNonNull(upTo, "upTo");
            Objects.requireNonNull(number, "number");
        }

        /**
         * A band of a bare amount.
         *
         * @param upTo its upper edge, which belongs to it
         * @param amount the amount in it
         */
        public Band(Amount upTo, Amount amount) {
            this(upTo, Stated.of(amount));
        }

        /** {@return the amount in it} */
        public Amount amount() {
            return number.amount();
        }
    }

    /**
     * An amount for each part that may be chosen.
     *
     * @param choice the kind of part, such as {@code drive}
     * @param numbers the amount for each part with what it rests on, by the part's name, in the order of the document
     */
    record ByChoice(String choice, Map<String, Stated> numbers) implements Quota {
        /** Copies the map. */
        public ByChoice {
            Checks.named(choice, "choice");
            numbers = Collections.unmodifiableMap(new LinkedHashMap<>(numbers));
        }

        /** {@return the amount for each part, by the part's name, in the order of the document} */
        public Map<String, Amount> amounts() {
            Map<String, Amount> amounts = new LinkedHashMap<>();
            numbers.forEach((part, number) -> amounts.put(part, number.amount()));
            return amounts;
        }
    }

    /**
     * One amount without a source of its own.
     *
     * @param amount the amount
     * @return the quota
     */
    static Quota fixed(Amount amount) {
        return new Fixed(Stated.of(amount));
    }

    /**
     * Bare amounts by choice of a part.
     *
     * @param choice the kind of part, such as {@code drive}
     * @param amounts the amount for each part, by the part's name
     * @return the quota
     */
    static Quota.ByChoice byChoice(String choice, Map<String, Amount> amounts) {
        Map<String, Stated> numbers = new LinkedHashMap<>();
        amounts.forEach((part, amount) -> numbers.put(part, Stated.of(amount)));
        return new ByChoice(choice, numbers);
    }
}
