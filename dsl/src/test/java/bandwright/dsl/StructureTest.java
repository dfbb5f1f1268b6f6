// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl;

import java.util.Set;

import org.jspecify.annotations.NullMarked;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

/** The structure told in DEVELOPERS.md, as rules: one direction, rooms that keep to themselves, the same bytes everywhere. */
@AnalyzeClasses(packages = "bandwright.dsl", importOptions = ImportOption.DoNotIncludeTests.class)
class StructureTest {
    @ArchTest
    static final ArchRule rooms_see_only_those_before_them = layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .layer("source")
            .definedBy("bandwright.dsl.source..")
            .layer("diagnostic")
            .definedBy("bandwright.dsl.diagnostic..")
            .layer("quantity")
            .definedBy("bandwright.dsl.quantity..")
            .layer("syntax")
            .definedBy("bandwright.dsl.syntax..")
            .layer("parse")
            .definedBy("bandwright.dsl.parse..")
            .layer("material")
            .definedBy("bandwright.dsl.material..")
            .layer("plane")
            .definedBy("bandwright.dsl.geometry.plane..")
            .layer("solid")
            .definedBy("bandwright.dsl.geometry.solid..")
            .layer("operation")
            .definedBy("bandwright.dsl.geometry.operation..")
            .layer("model")
            .definedBy("bandwright.dsl.model..")
            .layer("resolve")
            .definedBy("bandwright.dsl.resolve..")
            .layer("construct")
            .definedBy("bandwright.dsl.construct..")
            .layer("pattern")
            .definedBy("bandwright.dsl.pattern..")
            .layer("measure")
            .definedBy("bandwright.dsl.measure..")
            .layer("check")
            .definedBy("bandwright.dsl.check..")
            .layer("view")
            .definedBy("bandwright.dsl.view..")
            .layer("export")
            .definedBy("bandwright.dsl.export..")
            .layer("answering")
            .definedBy(
                    "bandwright.dsl.offer..",
                    "bandwright.dsl.bench..",
                    "bandwright.dsl.explain..",
                    "bandwright.dsl.explore..")
            .layer("export")
            .definedBy("bandwright.dsl.export..")
            .layer("edit")
            .definedBy("bandwright.dsl.edit..")
            .layer("door")
            .definedBy("bandwright.dsl")
            .whereLayer("door")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("edit")
            .mayOnlyBeAccessedByLayers("door")
            .whereLayer("export")
            .mayOnlyBeAccessedByLayers("answering", "door")
            .whereLayer("answering")
            .mayOnlyBeAccessedByLayers("door")
            .whereLayer("view")
            .mayOnlyBeAccessedByLayers("export", "answering", "door")
            .whereLayer("check")
            .mayOnlyBeAccessedByLayers("view", "answering", "edit", "door")
            .whereLayer("measure")
            .mayOnlyBeAccessedByLayers("check", "view", "answering", "door")
            .whereLayer("pattern")
            .mayOnlyBeAccessedByLayers("measure", "check", "view", "answering", "door")
            .whereLayer("construct")
            .mayOnlyBeAccessedByLayers("pattern", "measure", "check", "view", "export", "answering", "door")
            .whereLayer("resolve")
            .mayOnlyBeAccessedByLayers("pattern", "measure", "check", "answering", "edit", "door")
            .whereLayer("parse")
            .mayOnlyBeAccessedByLayers("edit", "door")
            .whereLayer("syntax")
            .mayOnlyBeAccessedByLayers("parse", "resolve", "pattern", "answering", "door")
            .whereLayer("operation")
            .mayOnlyBeAccessedByLayers("construct", "measure", "check", "view", "answering", "export", "door")
            .whereLayer("model")
            .mayOnlyBeAccessedByLayers(
                    "resolve",
                    "construct",
                    "pattern",
                    "measure",
                    "check",
                    "view",
                    "export",
                    "answering",
                    "edit",
                    "door");

    @ArchTest
    static final ArchRule answering_rooms_do_not_see_each_other = slices().matching(
                    "bandwright.dsl.(offer|bench|explain|explore)..")
            .should()
            .notDependOnEachOther();

    @ArchTest
    static final ArchRule geometry_knows_no_rings = noClasses()
            .that()
            .resideInAPackage("bandwright.dsl.geometry..")
            .should()
            .dependOnClassesThat(new DescribedPredicate<JavaClass>("are ours and not geometry") {
                @Override
                public boolean test(JavaClass type) {
                    return type.getPackageName().startsWith("bandwright.")
                            && !type.getPackageName().startsWith("bandwright.dsl.geometry.");
                }
            });

    @ArchTest
    static final ArchRule rooms_make_no_circle =
            slices().matching("bandwright.dsl.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule only_parse_knows_antlr = noClasses()
            .that()
            .resideOutsideOfPackage("bandwright.dsl.parse..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.antlr..");

    private static final Set<String> INEXACT =
            Set.of("sin", "cos", "tan", "asin", "acos", "atan", "atan2", "exp", "log", "log10", "pow", "cbrt", "hypot");

    @ArchTest
    static final ArchRule trigonometry_is_the_same_on_every_machine = noClasses()
            .should()
            .callMethodWhere(new DescribedPredicate<JavaCall<?>>("Math.sin and its kin") {
                @Override
                public boolean test(JavaCall<?> call) {
                    return call.getTargetOwner().isEquivalentTo(Math.class) && INEXACT.contains(call.getName());
                }
            });

    @ArchTest
    static final ArchRule nothing_asks_the_clock = noClasses()
            .should()
            .callMethod(System.class, "currentTimeMillis")
            .orShould()
            .callMethod(System.class, "nanoTime")
            .orShould()
            .dependOnClassesThat()
            .resideInAPackage("java.time..");

    @ArchTest
    static final ArchRule every_room_says_what_may_be_missing = classes()
            .that()
            .resideOutsideOfPackage("bandwright.dsl.parse.antlr..")
            .should(new ArchCondition<JavaClass>("live in a package marked so") {
                @Override
                public void check(JavaClass type, ConditionEvents events) {
                    boolean marked = type.getPackage().isAnnotatedWith(NullMarked.class);
                    events.add(new SimpleConditionEvent(
                            type, marked, type.getName() + " is in a package without @NullMarked"));
                }
            });
}
