package quoin;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.codeUnits;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.domain.JavaType;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.CompositeArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** The rules of the house: who may know whom, and what the library keeps its hands off. */
@AnalyzeClasses(packages = "quoin", importOptions = ImportOption.DoNotIncludeTests.class)
class HouseTest {
    /** Each package, lowest first, and what it may know of its own kind. */
    private static final Map<String, Set<String>> MAY_KNOW = mayKnow();

    private static Map<String, Set<String>> mayKnow() {
        Set<String> below = Set.of("measure", "judge", "parts", "opening");
        Map<String, Set<String>> map = new TreeMap<>();
        map.put("measure", Set.of());
        map.put("judge", Set.of("measure"));
        map.put("parts", Set.of("measure", "judge"));
        map.put("opening", Set.of("measure", "judge", "parts"));
        map.put("rulebook", Set.of("measure", "judge", "parts"));
        map.put("chain", below);
        map.put("fixing", below);
        map.put("clearance", below);
        map.put("drive", below);
        map.put("cutting", Set.of("measure"));
        Set<String> all = new TreeSet<>(map.keySet());
        map.put("job", Set.copyOf(all));
        all.add("job");
        map.put("sketch", Set.copyOf(all));
        map.put("words", Set.copyOf(all));
        return map;
    }

    // --- the analysis itself -----------------------------------------------------------------------------------

    /** An empty import would make every rule below true. */
    @ArchTest
    static void theLibraryIsLookedAt(JavaClasses classes) {
        assertThat(classes.size()).isGreaterThan(40);
        assertThat(classes.contain("quoin.measure.Uncertain")).isTrue();
        assertThat(classes.contain("quoin.HouseTest")).isFalse();
    }

    // --- who knows whom ----------------------------------------------------------------------------------------

    @ArchTest
    static final ArchRule EVERY_CLASS_LIVES_IN_A_KNOWN_PACKAGE = classes()
            .should()
            .resideInAnyPackage(
                    MAY_KNOW.keySet().stream().map(p -> "quoin." + p).toArray(String[]::new));

    @ArchTest
    static final ArchRule NO_ARROW_POINTS_BACK = CompositeArchRule.of(
            MAY_KNOW.keySet().stream().map(HouseTest::knowsOnlyWhatItMay).toList());

    private static ArchRule knowsOnlyWhatItMay(String name) {
        String[] others = MAY_KNOW.keySet().stream()
                .filter(other -> !other.equals(name) && !MAY_KNOW.get(name).contains(other))
                .map(other -> "quoin." + other)
                .toArray(String[]::new);
        return noClasses()
                .that()
                .resideInAPackage("quoin." + name)
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(others)
                .because("the data goes one way")
                .allowEmptyShould(true);
    }

    @ArchTest
    static final ArchRule PACKAGES_MAKE_NO_RING =
            slices().matching("quoin.(*)..").should().beFreeOfCycles();

    /** No sockets, loggers, reflection, threads or file systems: their packages are not in this list. */
    @ArchTest
    static final ArchRule NOTHING_ELSE_IS_KNOWN = classes()
            .should()
            .onlyDependOnClassesThat(resideInAnyPackage(
                    "quoin..",
                    "java.io",
                    "java.lang",
                    "java.lang.annotation",
                    "java.lang.invoke",
                    "java.lang.runtime",
                    "java.math",
                    "java.nio.charset",
                    "java.security",
                    "java.text",
                    "java.time..",
                    "java.util",
                    "java.util.function",
                    "java.util.regex",
                    "java.util.stream",
                    "javax.measure..",
                    "tech.units.indriya..",
                    "org.apache.commons.math3..",
                    "org.jspecify.annotations"));

    // --- what the library keeps its hands off ------------------------------------------------------------------

    @ArchTest
    static final ArchRule NO_FILES_THREADS_PROCESSES_OR_SERVICES = noClasses()
            .should()
            .dependOnClassesThat()
            .haveNameMatching("java\\.io\\.(File.*|RandomAccessFile|Console)"
                    + "|java\\.lang\\.(Thread.*|InheritableThreadLocal|Runtime|Process.*|System\\$Logger.*|ClassLoader)"
                    + "|java\\.util\\.(ServiceLoader.*|Timer.*|Scanner|ResourceBundle.*)"
                    + "|java\\.lang\\.invoke\\.(VarHandle|MethodHandles.*)"
                    + "|java\\.security\\.SecureRandom"
                    + "|java\\.time\\.(Clock|InstantSource)");

    @ArchTest
    static final ArchRule NO_CONSOLE_EXIT_PROPERTY_OR_CLOCK = none(
            "System beyond arraycopy",
            access -> owner(access, "java.lang.System") && !name(access).equals("arraycopy"));

    @ArchTest
    static final ArchRule NO_TIME_OF_DAY = none(
            "the time of day",
            access -> (in(access, "java.time") && name(access).equals("now"))
                    || call(access, "java.util.Date", "<init>()")
                    || call(access, "java.util.Calendar", "getInstance()")
                    || owner(access, "java.util.GregorianCalendar"));

    @ArchTest
    static final ArchRule NO_SEED_OF_THE_DAY = none(
            "a random number without a given seed",
            access -> call(access, "java.lang.Math", "random()")
                    || call(access, "java.lang.StrictMath", "random()")
                    || call(access, "java.util.Random", "<init>()")
                    || call(access, "java.util.SplittableRandom", "<init>()")
                    || call(access, "java.util.UUID", "randomUUID()")
                    || call(access, "java.util.Collections", "shuffle(java.util.List)")
                    || (in(access, "org.apache.commons.math3.random")
                            && name(access).equals("<init>")
                            && parameters(access).isEmpty()));

    /** Without a generator in front, commons-math3 makes one of its own, seeded by the clock. */
    @ArchTest
    static final ArchRule DISTRIBUTIONS_GET_NO_GENERATOR_OF_THEIR_OWN = none(
            "a distribution with a generator of its own",
            access -> in(access, "org.apache.commons.math3.distribution")
                    && name(access).equals("<init>")
                    && !parameters(access).startsWith("org.apache.commons.math3.random.RandomGenerator"));

    @ArchTest
    static final ArchRule NO_DEFAULT_LOCALE_ZONE_OR_CHARSET = none(
            "a default of the machine",
            access -> (owner(access, "java.util.Locale") && name(access).matches("[gs]etDefault"))
                    || (owner(access, "java.util.TimeZone") && name(access).matches("[gs]etDefault"))
                    || call(access, "java.time.ZoneId", "systemDefault()")
                    || call(access, "java.nio.charset.Charset", "defaultCharset()")
                    || call(access, "java.lang.String", "toLowerCase()")
                    || call(access, "java.lang.String", "toUpperCase()")
                    || call(access, "java.lang.String", "getBytes()")
                    || call(access, "java.lang.String", "formatted([Ljava.lang.Object;)")
                    || call(access, "java.lang.String", "format(java.lang.String, [Ljava.lang.Object;)")
                    || (owner(access, "java.lang.String")
                            && name(access).equals("<init>")
                            && Set.of("[B", "[B, int, int").contains(parameters(access)))
                    || call(access, "java.io.InputStreamReader", "<init>(java.io.InputStream)")
                    || call(access, "java.io.OutputStreamWriter", "<init>(java.io.OutputStream)")
                    || call(access, "java.util.Formatter", "<init>()")
                    || (in(access, "java.text")
                            && name(access).matches("get\\w*Instance|<init>")
                            && !parameters(access).contains("java.util.Locale")
                            && !parameters(access).contains("java.text.DecimalFormatSymbols")));

    @ArchTest
    static final ArchRule NO_LOOKING_INTO_CLASSES = none(
            "reflection",
            access -> owner(access, "java.lang.Class")
                    && name(access)
                            .matches("forName|newInstance|getClassLoader|get(Declared)?"
                                    + "(Constructors?|Methods?|Fields?|Annotations?|Classes)|getRecordComponents"));

    @ArchTest
    static final ArchRule NO_STACK_TRACES =
            none("a stack trace on the console", access -> name(access).equals("printStackTrace"));

    // --- numbers -----------------------------------------------------------------------------------------------

    /** The same job gives the same bytes: java.lang.Math may differ in the last place from machine to machine. */
    @ArchTest
    static final ArchRule ELEMENTARY_FUNCTIONS_ARE_THOSE_OF_STRICT_MATH = none(
            "an elementary function of Math",
            access -> (owner(access, "java.lang.Math") || owner(access, "org.apache.commons.math3.util.FastMath"))
                    && name(access).matches("a?(sin|cos|tan)h?|atan2|exp|expm1|log|log10|log1p|pow|cbrt|hypot"));

    @ArchTest
    static final ArchRule NO_ARITHMETIC_ON_QUANTITIES = none(
            "arithmetic on a Quantity",
            access -> access.getTargetOwner().isAssignableTo("javax.measure.Quantity")
                    && name(access).matches("add|subtract|multiply|divide|inverse|negate|divideToIntegralQuotient"));

    // --- what others see ---------------------------------------------------------------------------------------

    @ArchTest
    static final ArchRule COMMONS_MATH_STAYS_BEHIND_A_DOOR = classes()
            .that()
            .arePublic()
            .should()
            .onlyDependOnClassesThat(DescribedPredicate.not(resideInAnyPackage("org.apache.commons.math3..")));

    @ArchTest
    static final ArchRule COMMONS_MATH_IS_IN_NO_SIGNATURE = codeUnits()
            .that()
            .areDeclaredInClassesThat()
            .arePublic()
            .and(describe("are public or protected", HouseTest::isSeen))
            .should(haveNoTypeFrom("org.apache.commons.math3"));

    @ArchTest
    static final ArchRule STATIC_FIELDS_ARE_FINAL =
            fields().that().areStatic().should().beFinal().because("the library has no state");

    @ArchTest
    static final ArchRule NO_ARRAY_IS_HANDED_OUT_AS_A_FIELD = noFields()
            .that()
            .arePublic()
            .or()
            .areProtected()
            .should()
            .haveRawType(describe("an array", JavaClass::isArray))
            .allowEmptyShould(true);

    // --- words of these rules ----------------------------------------------------------------------------------

    private static ArchRule none(String what, Predicate<JavaAccess<?>> bad) {
        return noClasses()
                .should()
                .accessTargetWhere(describe("it is " + what, bad))
                .because("the same job, rulebook and parts give the same bytes");
    }

    private static boolean owner(JavaAccess<?> access, String className) {
        return access.getTargetOwner().getName().equals(className);
    }

    private static boolean in(JavaAccess<?> access, String packageName) {
        String name = access.getTargetOwner().getPackageName();
        return name.equals(packageName) || name.startsWith(packageName + ".");
    }

    private static String name(JavaAccess<?> access) {
        return access.getTarget().getName();
    }

    private static String parameters(JavaAccess<?> access) {
        return access.getTarget() instanceof AccessTarget.CodeUnitAccessTarget target
                ? String.join(
                        ", ",
                        target.getRawParameterTypes().stream()
                                .map(JavaClass::getName)
                                .toList())
                : "";
    }

    private static boolean call(JavaAccess<?> access, String className, String signature) {
        return access.getTarget() instanceof AccessTarget.CodeUnitAccessTarget
                && owner(access, className)
                && (name(access) + "(" + parameters(access) + ")").equals(signature);
    }

    private static boolean isSeen(JavaCodeUnit unit) {
        return unit.getModifiers().contains(JavaModifier.PUBLIC)
                || unit.getModifiers().contains(JavaModifier.PROTECTED);
    }

    private static ArchCondition<JavaCodeUnit> haveNoTypeFrom(String packageName) {
        return new ArchCondition<>("have no type of " + packageName) {
            @Override
            public void check(JavaCodeUnit unit, ConditionEvents events) {
                List<JavaType> types = Stream.concat(Stream.of(unit.getReturnType()), unit.getParameterTypes().stream())
                        .toList();
                boolean named = Stream.concat(
                                types.stream().flatMap(type -> type.getAllInvolvedRawTypes().stream()),
                                unit.getExceptionTypes().stream())
                        .anyMatch(type -> type.getPackageName().startsWith(packageName));
                events.add(new SimpleConditionEvent(unit, !named, unit.getDescription() + " names " + packageName));
            }
        };
    }
}
