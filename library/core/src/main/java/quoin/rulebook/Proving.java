package quoin.rulebook;

/**
 * What every proof about a rulebook goes by. For use by one thread.
 *
 * @param rulebook the rules, without errors
 * @param names what they may name
 * @param offers which parts may be chosen
 * @param meter how much may still be looked at
 * @param mapping the sizes as functions of figures
 * @param limiting inside which values they are kept
 * @param report where warnings go
 */
record Proving(
        Rulebook rulebook, Names names, Offers offers, Meter meter, Mapping mapping, Limiting limiting, Report report) {
    static Proving of(Rulebook rulebook, Names names, Report report) {
        Offers offers = Offers.of(rulebook);
        Meter meter = new Meter();
        Mapping mapping = Mapping.of(rulebook, names, offers, meter);
        return new Proving(
                rulebook, names, offers, meter, mapping, new Limiting(rulebook, mapping, names, meter), report);
    }
}
