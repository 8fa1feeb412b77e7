package quoin.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Few fields or many: the same as a map in the order of insertion in which the first of a name stays. */
class MembersProperties {
    @Provide
    Arbitrary<List<String>> names() {
        return Arbitraries.integers()
                .between(0, 40)
                .map(i -> "f" + i)
                .list()
                .ofMinSize(0)
                .ofMaxSize(40);
    }

    @Property(tries = 200)
    void theSameAsAMap(@ForAll("names") List<String> names) {
        Map<String, Node.Field> map = new LinkedHashMap<>();
        Members members = new Members();
        for (int i = 0; i < names.size(); i++) {
            Node value = Node.leaf(Node.Kind.NUMBER, Integer.toString(i), Path.ROOT, 1, 1);
            Node.Field field = new Node.Field(value, 1, i + 1);
            boolean added = map.putIfAbsent(names.get(i), field) == null;
            assertThat(members.add(names.get(i), field)).isEqualTo(added);
        }
        assertThat(members).isEqualTo(map).hasSize(map.size());
        assertThat(List.copyOf(members.keySet())).isEqualTo(List.copyOf(map.keySet()));
        for (int i = 0; i <= 40; i++) {
            assertThat(members.get("f" + i)).isSameAs(map.get("f" + i));
            assertThat(members.containsKey("f" + i)).isEqualTo(map.containsKey("f" + i));
        }
    }
}
