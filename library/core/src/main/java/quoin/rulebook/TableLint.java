package quoin.rulebook;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import quoin.judge.Args;
import quoin.measure.Dimension;

/** What is wrong with the named tables, and with the names of numbers. */
final class TableLint {
    private final Report report;
    private final QuotaLint quotas;
    private final Map<String, Table> tables = new LinkedHashMap<>();
    private final Set<String> used = new HashSet<>();
    private final Map<String, Stated> numbers = new LinkedHashMap<>();

    TableLint(Report report, QuotaLint quotas) {
        this.report = report;
        this.quotas = quotas;
    }

    void check(Rulebook rulebook) {
        for (int i = 0; i < rulebook.tables().size(); i++) {
            table(rulebook.tables().get(i), "/tables/" + i);
        }
        for (int i = 0; i < rulebook.sizes().size(); i++) {
            SizeClause clause = rulebook.sizes().get(i);
            String at = "/sizes/" + i;
            if (clause.of() instanceof Base.OfQuota of) {
                quota(of.quota(), at + "/of");
            }
            items(clause.less(), at + "/less");
            items(clause.more(), at + "/more");
        }
        for (int i = 0; i < rulebook.bounds().size(); i++) {
            BoundClause clause = rulebook.bounds().get(i);
            String at = "/bounds/" + i;
            clause.atLeast().forEach(quota -> quota(quota, at + "/atLeast"));
            clause.atMost().forEach(quota -> quota(quota, at + "/atMost"));
            clause.within().forEach(quota -> quota(quota, at + "/within"));
        }
        for (int i = 0; i < rulebook.tables().size(); i++) {
            String id = rulebook.tables().get(i).id();
            if (!used.contains(id)) {
                report.warning("unused-table", "/tables/" + i + "/id", Args.of("table", id));
            }
        }
    }

    private void items(List<Item> items, String at) {
        for (int i = 0; i < items.size(); i++) {
            quota(items.get(i).quota(), at + "/" + i);
        }
    }

    private void table(Table table, String at) {
        if (tables.putIfAbsent(table.id(), table) != null) {
            report.error("duplicate-id", at + "/id", Args.of("id", table.id()));
        }
        Optional<Dimension> kind =
                table.bands().stream().map(band -> band.amount().dimension()).findFirst();
        Optional<Dimension> edges =
                table.bands().stream().map(band -> band.upTo().dimension()).findFirst();
        quotas.bands(table.id(), table.bands(), at + "/amounts", edges, kind);
        table.bands().forEach(band -> number(band.number(), at + "/amounts"));
        report.source(table.id(), table.source(), at);
    }

    private void quota(Quota quota, String at) {
        if (quota instanceof Quota.Banded banded && !banded.table().isEmpty()) {
            used.add(banded.table());
            Table table = tables.get(banded.table());
            if (table == null || !table.by(banded.by()).equals(banded)) {
                report.error("unknown-table", at + "/table", Args.of("table", banded.table()));
            }
            return;
        }
        numbers(quota).forEach(number -> number(number, at));
    }

    static Stream<Stated> numbers(Quota quota) {
        if (quota instanceof Quota.Fixed fixed) {
            return Stream.of(fixed.number());
        }
        return quota instanceof Quota.Banded banded
                ? banded.bands().stream().map(Quota.Band::number)
                : ((Quota.ByChoice) quota).numbers().values().stream();
    }

    /** Two numbers of one name are one number: they must be alike, or its doubt would be two. */
    private void number(Stated number, String at) {
        if (number.id().isEmpty()) {
            return;
        }
        Stated before = numbers.putIfAbsent(number.id(), number);
        boolean same = before == null
                || (before.amount().equals(number.amount()) && before.doubt().equals(number.doubt()));
        if (!same) {
            report.error("duplicate-number", at, Args.of("id", number.id()));
        }
    }
}
