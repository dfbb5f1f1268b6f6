// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.dependencies.SlicesRuleDefinition;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;

@AnalyzeClasses(packages = "bandwright.kernel", importOptions = ImportOption.DoNotIncludeTests.class)
class StructureTest {
    /** Cells in Java have the standard streams in their hands. */
    private static final String JAVA = "bandwright.kernel.cell.java";

    @ArchTest
    static final ArchRule packages_see_only_those_below_them = layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .layer("notebook")
            .definedBy("bandwright.kernel.notebook")
            .layer("display")
            .definedBy("bandwright.kernel.display")
            .layer("cell")
            .definedBy("bandwright.kernel.cell..")
            .layer("files")
            .definedBy("bandwright.kernel.files")
            .layer("catalogue")
            .definedBy("bandwright.kernel.catalogue..")
            .layer("run")
            .definedBy("bandwright.kernel.run")
            .layer("mark")
            .definedBy("bandwright.kernel.mark")
            .layer("protocol")
            .definedBy("bandwright.kernel.protocol")
            .layer("session")
            .definedBy("bandwright.kernel.session")
            .layer("install")
            .definedBy("bandwright.kernel.install")
            .layer("page")
            .definedBy("bandwright.kernel.page..")
            .layer("app")
            .definedBy("bandwright.kernel.app")
            .whereLayer("app")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("page")
            .mayOnlyBeAccessedByLayers("app")
            .whereLayer("mark")
            .mayOnlyBeAccessedByLayers("app", "page")
            .whereLayer("run")
            .mayOnlyBeAccessedByLayers("app", "page", "mark")
            .whereLayer("install")
            .mayOnlyBeAccessedByLayers("app")
            .whereLayer("session")
            .mayOnlyBeAccessedByLayers("app", "install")
            .whereLayer("protocol")
            .mayOnlyBeAccessedByLayers("app", "install", "session")
            .whereLayer("files")
            .mayOnlyBeAccessedByLayers("app", "page", "run", "session", "install", "catalogue")
            .whereLayer("cell")
            .mayOnlyBeAccessedByLayers("app", "page", "run", "mark", "session", "install")
            .whereLayer("display")
            .mayOnlyBeAccessedByLayers("app", "page", "run", "mark", "session", "cell");

    @ArchTest
    static final ArchRule the_protocol_stands_alone = noClasses()
            .that()
            .resideInAPackage("bandwright.kernel.protocol")
            .should()
            .dependOnClassesThat(resideInAPackage("bandwright..")
                    .and(DescribedPredicate.not(resideInAPackage("bandwright.kernel.protocol"))));

    @ArchTest
    static final ArchRule sockets_are_touched_in_one_place = noClasses()
            .that(notIn("bandwright.kernel.protocol"))
            .should()
            .dependOnClassesThat(resideInAPackage("org.zeromq.."));

    @ArchTest
    static final ArchRule java_is_compiled_in_one_place = noClasses()
            .that(notIn(JAVA))
            .should()
            .dependOnClassesThat(resideInAnyPackage("jdk.jshell..", "org.objectweb.asm.."));

    @ArchTest
    static final ArchRule packages_have_no_cycles = SlicesRuleDefinition.slices()
            .matching("bandwright.kernel.(**)")
            .should()
            .beFreeOfCycles();

    @ArchTest
    static final ArchRule the_language_has_one_door = noClasses()
            .should()
            .dependOnClassesThat(innerRoomsOfTheLanguage())
            .because("the kernel speaks to the workbench and shows what it answers");

    @ArchTest
    static final ArchRule only_app_prints = noClasses()
            .that(notIn("bandwright.kernel.app").and(notIn(JAVA)))
            .should()
            .accessField(System.class, "out");

    @ArchTest
    static final ArchRule only_app_complains = noClasses()
            .that(notIn("bandwright.kernel.app").and(notIn(JAVA)))
            .should()
            .accessField(System.class, "err");

    @ArchTest
    static final ArchRule only_main_exits = noClasses()
            .that(DescribedPredicate.describe(
                    "are not Main", type -> !type.getSimpleName().equals("Main")))
            .should()
            .callMethod(System.class, "exit", int.class);

    @ArchTest
    static final ArchRule nothing_but_the_kernel_knows_the_time = noClasses()
            .that(notIn("bandwright.kernel.protocol")
                    .and(notIn("bandwright.kernel.session"))
                    .and(notIn("bandwright.kernel.page.server"))
                    // How long is left is told to a person and to no file.
                    .and(DescribedPredicate.describe(
                            "are not SweepProgress",
                            type -> !type.getFullName().equals("bandwright.kernel.app.SweepProgress"))))
            .should()
            .dependOnClassesThat(resideInAnyPackage("java.time..")
                    .or(JavaClass.Predicates.assignableTo(java.util.Date.class))
                    .or(JavaClass.Predicates.assignableTo(java.util.Random.class)))
            .orShould()
            .callMethod(System.class, "currentTimeMillis")
            .orShould()
            .callMethod(System.class, "nanoTime");

    @ArchTest
    static final ArchRule json_is_read_in_few_places = noClasses()
            .that(notIn("bandwright.kernel.notebook")
                    .and(notIn("bandwright.kernel.app"))
                    .and(notIn("bandwright.kernel.mark"))
                    .and(notIn("bandwright.kernel.protocol"))
                    .and(notIn("bandwright.kernel.session"))
                    .and(notIn("bandwright.kernel.install"))
                    .and(notIn("bandwright.kernel.catalogue"))
                    .and(notIn("bandwright.kernel.page.desk")))
            .should()
            .dependOnClassesThat(resideInAPackage("com.fasterxml.."));

    @ArchTest
    static final ArchRule spark_is_known_in_one_place = noClasses()
            .that(notIn("bandwright.kernel.catalogue.spark"))
            .should()
            .dependOnClassesThat(resideInAnyPackage("org.apache.spark..", "org.apache.hadoop..", "scala.."))
            .because("its classes are there only where it started the program");

    @ArchTest
    static final ArchRule command_lines_are_read_in_one_place = noClasses()
            .that(notIn("bandwright.kernel.app"))
            .should()
            .dependOnClassesThat(resideInAPackage("picocli.."));

    private static DescribedPredicate<JavaClass> innerRoomsOfTheLanguage() {
        return resideInAPackage("bandwright.dsl..")
                .and(DescribedPredicate.not(resideInAnyPackage(
                        "bandwright.dsl",
                        "bandwright.dsl.check",
                        "bandwright.dsl.diagnostic",
                        "bandwright.dsl.edit",
                        "bandwright.dsl.explain",
                        "bandwright.dsl.export",
                        "bandwright.dsl.export.pdf",
                        "bandwright.dsl.quantity",
                        "bandwright.dsl.source",
                        "bandwright.dsl.view",
                        "bandwright.dsl.view.drawing")));
    }

    private static DescribedPredicate<JavaClass> notIn(String name) {
        return DescribedPredicate.not(resideInAPackage(name));
    }
}
