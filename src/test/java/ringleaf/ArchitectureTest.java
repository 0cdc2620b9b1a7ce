// SPDX-License-Identifier: Apache-2.0
package ringleaf;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Holds the table of packages: what each may use, and that nothing goes round in a circle. */
class ArchitectureTest {
    static final JavaClasses CODE = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("ringleaf");
    private static final String JTS = "org.locationtech.jts..";
    private static final String JSON = "com.fasterxml.jackson.core..";
    private static final String MATHS = "org.apache.commons.math3..";

    /** Packages below ringleaf, and what else each may use. Every package of the code stands here. */
    private static final Map<String, List<String>> TABLE = Map.ofEntries(
            Map.entry("geom", List.of()),
            Map.entry("space", List.of("geom")),
            Map.entry("solid", List.of("geom", "space")),
            Map.entry("curve", List.of("geom", JTS, MATHS)),
            Map.entry("part", List.of("geom", "space", "curve")),
            Map.entry("machine", List.of("part", "spec", "geom", "space")),
            Map.entry("linkage", List.of()),
            Map.entry("spec", List.of("geom", "space", "org.snakeyaml.engine..", JSON)),
            Map.entry("tooth", List.of("geom", "curve", MATHS)),
            Map.entry("groove", List.of("geom", "curve")),
            Map.entry("leaf", List.of("geom")),
            Map.entry(
                    "mechanism",
                    List.of(
                            "machine", "part", "spec", "geom", "space", "curve", "tooth", "groove", "leaf", "linkage",
                            "outline", MATHS)),
            Map.entry("firmware", List.of("mechanism", "spec", "part", "draw", "curve", "geom", MATHS)),
            Map.entry("tolerance", List.of("mechanism", "part", "geom", MATHS)),
            Map.entry("verify", List.of("part", "curve", "geom", "space", JTS)),
            Map.entry("kinds", List.of("mechanism", "spec", "part")),
            Map.entry("explore", List.of("verify", "kinds", "mechanism", "part", "spec", "geom")),
            Map.entry("fabricate", List.of("part", "curve", "geom", "spec")),
            Map.entry("outline", List.of("part", "curve", "geom", "spec", "javax.xml..", "org.xml.sax..")),
            Map.entry("coupon", List.of("part", "curve", "geom", "spec", MATHS)),
            Map.entry(
                    "draw",
                    List.of(
                            "part",
                            "curve",
                            "solid",
                            "space",
                            "geom",
                            "org.apache.batik..",
                            "org.w3c.dom..",
                            "org.apache.pdfbox..")),
            Map.entry("figure", List.of("verify", "draw", "solid", "part", "geom", "space")),
            Map.entry("report", List.of("draw", "explore", "verify", "part", "geom", "space", JSON)));

    @TestFactory
    Stream<DynamicTest> packagesUseOnlyWhatTheTableGrants() {
        return TABLE.entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(row -> DynamicTest.dynamicTest(row.getKey(), () -> {
                    List<String> granted = new ArrayList<>(List.of("java..", "ringleaf." + row.getKey() + ".."));
                    for (String other : row.getValue()) {
                        granted.add(TABLE.containsKey(other) ? "ringleaf." + other + ".." : other);
                    }
                    classes()
                            .that()
                            .resideInAPackage("ringleaf." + row.getKey() + "..")
                            .should()
                            .onlyDependOnClassesThat(isIn(granted))
                            .allowEmptyShould(row.getKey().equals("fabricate"))
                            .check(CODE);
                }));
    }

    @Test
    void everyPackageStandsInTheTable() {
        classes()
                .should()
                .resideInAnyPackage(Stream.concat(TABLE.keySet().stream(), Stream.of("cli"))
                        .map(name -> "ringleaf." + name + "..")
                        .toArray(String[]::new))
                .check(CODE);
    }

    @Test
    void kindsNeverUseEachOther() {
        // Bodies are no kind: bores, hub screws and the like, for every kind with round parts.
        slices().matching("ringleaf.mechanism.(*)..")
                .should()
                .notDependOnEachOther()
                .ignoreDependency(DescribedPredicate.alwaysTrue(), resideInAPackage("ringleaf.mechanism.body"))
                .check(CODE);
    }

    @Test
    void onlyTheRegistryKnowsKinds() {
        noClasses()
                .that()
                .resideOutsideOfPackages("ringleaf.kinds", "ringleaf.mechanism..")
                .should()
                .dependOnClassesThat(resideInAPackage("ringleaf.mechanism.(*)..")
                        .and(DescribedPredicate.not(resideInAPackage("ringleaf.mechanism.body.."))))
                .check(CODE);
    }

    @Test
    void onlyTheCommandLineTouchesFilesAndTheSystem() {
        noClasses()
                .that()
                .resideOutsideOfPackage("ringleaf.cli..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("java.nio.file..")
                .orShould()
                .dependOnClassesThat()
                .haveNameMatching("java\\.io\\.(File.*|RandomAccessFile|Console)")
                .orShould()
                .dependOnClassesThat()
                .haveNameMatching("java\\.time\\..*|java\\.util\\.(Date|Calendar|TimeZone)|java\\.lang\\.Process.*")
                .orShould()
                .accessTargetWhere(isSystemBeyondCopying())
                .check(CODE);
    }

    @Test
    void nothingGoesRoundInACircle() {
        slices().matching("ringleaf.(*)..").should().beFreeOfCycles().check(CODE);
        // Packages of every depth, each for itself.
        slices().matching("ringleaf.(**)").should().beFreeOfCycles().check(CODE);
    }

    @Test
    void nothingOutsideTheTestsUsesTheCommandLine() {
        noClasses()
                .that()
                .resideOutsideOfPackage("ringleaf.cli..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("ringleaf.cli..")
                .check(CODE);
    }

    /** Copying arrays is arithmetic; clocks, properties, streams and exit codes are not. */
    private static DescribedPredicate<com.tngtech.archunit.core.domain.JavaAccess<?>> isSystemBeyondCopying() {
        return DescribedPredicate.describe(
                "that is System beyond arraycopy",
                access -> access.getTargetOwner().isEquivalentTo(System.class)
                        && !access.getTarget().getName().equals("arraycopy")
                        && !access.getTarget().getName().equals("identityHashCode"));
    }

    private static DescribedPredicate<JavaClass> isIn(List<String> packages) {
        return JavaClass.Predicates.resideInAnyPackage(packages.toArray(String[]::new))
                .or(DescribedPredicate.describe(
                        "arrays of numbers", c -> c.getBaseComponentType().isPrimitive()))
                .or(DescribedPredicate.describe(
                        "arrays of those",
                        c -> c.isArray()
                                && JavaClass.Predicates.resideInAnyPackage(packages.toArray(String[]::new))
                                        .test(c.getBaseComponentType())));
    }
}
