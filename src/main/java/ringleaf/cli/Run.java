// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.io.InputStream;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import ringleaf.explore.Change;
import ringleaf.explore.Decider;
import ringleaf.explore.Variants;
import ringleaf.explore.WhyNot;
import ringleaf.fabricate.Bill;
import ringleaf.fabricate.Preparation;
import ringleaf.fabricate.SheetSet;
import ringleaf.fabricate.Sheets;
import ringleaf.figure.SpaceJudge;
import ringleaf.kinds.Kinds;
import ringleaf.kinds.SetupReader;
import ringleaf.mechanism.Kind;
import ringleaf.mechanism.Request;
import ringleaf.part.Assembly;
import ringleaf.part.Design;
import ringleaf.part.Finding;
import ringleaf.part.Setup;
import ringleaf.part.Stand;
import ringleaf.spec.MechanismSpec;
import ringleaf.spec.SetOption;
import ringleaf.spec.SpecDocument;
import ringleaf.spec.SpecReader;
import ringleaf.spec.shared.Catalogues;
import ringleaf.spec.shared.SharedFiles;
import ringleaf.spec.text.Node;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.SpecRefused;
import ringleaf.spec.text.SpecSource;
import ringleaf.verify.Clearance;
import ringleaf.verify.Judge;
import ringleaf.verify.Options;
import ringleaf.verify.SetupJudge;

/** The way of one spec from its text to designs with findings. */
final class Run {
    /** States at which changes that would fit are tried. */
    private static final int TRIED_STATES = 31;

    private static final int MOST_REMEDIES = 4;
    /** Changes that are tried before one is enough: a run that fails is not to take seconds. */
    private static final int ATTEMPTS = 300;
    /** However long a kind takes to solve: whoever waits for a verdict is not to wait for hints. */
    private static final long REMEDY_NANOS = 20_000_000_000L;

    private final Kinds kinds;
    private final Asked asked;
    private final SpecDocument document;
    private final List<Kind.Planned> planned;
    private final Supplier<Variants> variants;
    /** What the outlines of designs say, as far as they were judged before all are. */
    private final Map<Assembly, List<Finding>> onOutlines = new IdentityHashMap<>();
    /** What is to be laid on sheets; null before it was prepared, and where nothing is asked. */
    private Sheets sheets;
    /** Where the designs stand; empty before they were made, and of trial pieces. */
    private Optional<Setup> setup = Optional.empty();

    private List<Clearance> clearances = List.of();

    private Run(
            Kinds kinds, Asked asked, SpecDocument document, List<Kind.Planned> planned, Supplier<Variants> variants) {
        this.kinds = kinds;
        this.asked = asked;
        this.document = document;
        this.planned = planned;
        this.variants = variants;
    }

    /**
     * Reads what is asked.
     *
     * @throws SpecRefused with everything that is wrong in spec, options and catalogues
     */
    static Run read(Asked asked, Surroundings surroundings, InputStream in) {
        Problems problems = new Problems();
        SharedFiles shared = OwnCatalogues.of(asked.spec(), asked.shared(), surroundings);
        Catalogues catalogues = new Catalogues(shared, problems);
        List<SetOption> options = new ArrayList<>();
        for (String set : asked.sets()) {
            SetOption.parse(set, problems).ifPresent(options::add);
        }
        Optional<SpecSource> source = new SpecFinder(surroundings, in).find(asked.spec(), problems);
        Kinds kinds = surroundings.kinds();
        SpecReader reader = new SpecReader(kinds.fields(), catalogues, problems);
        Optional<Node.Mapping> root = source.isPresent() ? reader.root(source.get(), options) : Optional.empty();
        Optional<SpecDocument> document = root.isPresent() ? reader.readOn(source.get(), root.get()) : Optional.empty();
        problems.settle();
        List<Kind.Planned> planned = new ArrayList<>();
        if (document.isPresent()) {
            for (MechanismSpec mechanism : document.get().mechanisms()) {
                planned.add(plan(kinds, mechanism, document.get(), problems));
            }
        }
        document.ifPresent(d -> new SetupReader(kinds, d, problems).check());
        problems.throwIfAny();
        return new Run(
                kinds,
                asked,
                document.orElseThrow(),
                planned,
                () -> new Variants(kinds, source.orElseThrow(), root.orElseThrow(), shared));
    }

    private static Kind.Planned plan(Kinds kinds, MechanismSpec mechanism, SpecDocument document, Problems problems) {
        return kinds.of(mechanism)
                .read(new Request(
                        mechanism.name(), mechanism.values(), document.fabrication(), document.catalogues(), problems));
    }

    SpecDocument document() {
        return document;
    }

    /** The spec and everything that is one option away from it. */
    Variants variants() {
        return variants.get();
    }

    /** Every mechanism, ready to be designed, in the order of the spec. */
    List<Kind.Planned> planned() {
        return planned;
    }

    /** Names of the mechanisms in the same order. */
    List<String> names() {
        List<String> names = new ArrayList<>();
        for (MechanismSpec mechanism : document.mechanisms()) {
            names.add(mechanism.name());
        }
        return names;
    }

    /**
     * Designs every mechanism; where one fails, the nearest changes that would fit go with it.
     *
     * @throws SpecRefused when one stands on a body that another does not have as it is designed
     */
    List<Design> design() {
        return settled().stream()
                .map(each ->
                        failed(each) && each.remedies().isEmpty() ? each.withRemedies(remedies(each.name())) : each)
                .toList();
    }

    /**
     * Designs every mechanism, with what the spec leaves open decided where first guesses do not work.
     *
     * @throws SpecRefused when one stands on a body that another does not have as it is designed
     */
    List<Design> settled() {
        List<Design> all = new ArrayList<>();
        for (int i = 0; i < planned.size(); i++) {
            Design design = counted(headed(planned.get(i).design(asked.states())));
            all.add(holds(design) ? design : settled(i).orElse(design));
        }
        Problems problems = new Problems();
        setup = new SetupReader(kinds, document, problems).setup(all);
        problems.throwIfAny();
        return all;
    }

    /** Where each of the designs stands, as far as there is anything to tell: not of one alone of which nothing is said. */
    List<Optional<Stand>> stands(List<Design> designs) {
        List<Optional<Stand>> stands = new ArrayList<>();
        for (int i = 0; i < designs.size(); i++) {
            int index = i;
            boolean told = designs.size() > 1
                    || document.mechanisms().get(i).standing().isGiven();
            stands.add(told ? setup.map(s -> s.stands().get(index)) : Optional.empty());
        }
        return stands;
    }

    private static boolean failed(Design design) {
        return new Judged(design, design.findings()).failed();
    }

    /** Whether nothing fails, calculated or on the outlines; what these say is kept for the verdict. */
    private boolean holds(Design design) {
        if (failed(design)) {
            return false;
        }
        if (kinds.named(design.kind()).decisions().isEmpty()) {
            return true;
        }
        List<Finding> found = Judge.judge(design.assembly(), Options.DEFAULT).findings();
        onOutlines.put(design.assembly(), found);
        return !new Judged(design, found).failed();
    }

    /** The design of a mechanism whose first guesses do not work, with what the spec leaves open decided otherwise. */
    private Optional<Design> settled(int index) {
        String name = names().get(index);
        int threads = Runtime.getRuntime().availableProcessors();
        List<Decider.Taken> taken = new Decider(variants.get(), name, asked.states(), threads).taken();
        if (taken.isEmpty()) {
            return Optional.empty();
        }
        List<SetOption> options = taken.stream().map(Decider.Taken::option).toList();
        planned.set(index, variants.get().reader().read(options).planned().get(index));
        Design design = counted(headed(planned.get(index).design(asked.states())));
        return Optional.of(
                design.withDecisions(taken.stream().map(Decider.Taken::choice).toList()));
    }

    private Design headed(Design design) {
        return design.withHeadline(kinds.named(design.kind()).headline());
    }

    private Design counted(Design design) {
        return Bill.of(design, document.fabrication(), document.catalogues());
    }

    private List<String> remedies(String mechanism) {
        int threads = Runtime.getRuntime().availableProcessors();
        WhyNot whyNot = new WhyNot(variants.get(), TRIED_STATES, threads);
        WhyNot.Effort effort = new WhyNot.Effort(MOST_REMEDIES, ATTEMPTS, false);
        List<String> lines = new ArrayList<>();
        long end = System.nanoTime() + REMEDY_NANOS;
        List<Change> changes = whyNot.changes(mechanism, effort, (d, t) -> {}, () -> System.nanoTime() > end)
                .single();
        for (Change change : changes) {
            lines.add(change.words(false));
        }
        if (lines.isEmpty()) {
            lines.add("no single change that was tried; `ringleaf explore SPEC --why-not` tries two together");
        } else {
            lines.add("to try the first: " + changes.get(0).typed());
        }
        return lines;
    }

    /**
     * Trial pieces of the mechanisms that have any; the others are left out.
     *
     * @param typed number of blades of each
     * @throws Stop when that cannot be
     */
    List<Design> trialPieces(String typed) {
        int members = TrialBlades.of(typed, document.mechanisms(), planned);
        List<Design> all = new ArrayList<>();
        for (Kind.Planned each : planned) {
            if (each.members() > 0) {
                all.add(counted(headed(each.trialPiece(asked.states(), members))));
            }
        }
        return all;
    }

    /** The mechanisms of which there is no trial piece. */
    List<String> untried() {
        List<String> names = new ArrayList<>();
        for (int i = 0; i < planned.size(); i++) {
            if (planned.get(i).members() == 0) {
                MechanismSpec mechanism = document.mechanisms().get(i);
                names.add(mechanism.name() + ": a " + mechanism.kind().name() + " has no blades");
            }
        }
        return names;
    }

    /**
     * Makes every design ready for its machines, in their order; empty when nothing is asked of them.
     *
     * @throws SpecRefused when a part is larger than its sheet, or sheets contradict each other
     */
    List<Preparation> prepare(List<Design> designs) {
        List<Preparation> all = new ArrayList<>();
        if (document.fabrication().isCuttingAsked()) {
            for (Design design : designs) {
                all.add(Preparation.of(design, document.fabrication(), document.catalogues()));
            }
            Problems problems = new Problems();
            sheets = Sheets.of(designs, all, problems);
            problems.throwIfAny();
        }
        return all;
    }

    /** Lays out the sheets that are asked for of what was prepared; a terminal is told how far it has come. */
    List<SheetSet> sheets(Surroundings surroundings, PrintStream err) {
        if (sheets == null) {
            return List.of();
        }
        try (Counter counter = Counter.of("sheets", surroundings.errIsTerminal(), err)) {
            return sheets.laid(counter::tried);
        }
    }

    /** What {@link #judge} found of that. */
    List<Clearance> judgedClearances() {
        return clearances;
    }

    /** How near the mechanisms come to one another where they stand; none of one alone, and of trial pieces. */
    private List<Clearance> clearances() {
        Options options = Options.DEFAULT.withThorough(asked.thorough());
        return setup.map(s -> SetupJudge.judge(s, options, new SpaceJudge(s, options)))
                .orElse(List.of());
    }

    /** Judges every design; where it takes long, a terminal is told how far it has come. */
    List<Judged> judge(List<Design> designs, List<Preparation> prepared, Surroundings surroundings, PrintStream err) {
        List<Judged> all = new ArrayList<>();
        clearances = clearances();
        for (int i = 0; i < designs.size(); i++) {
            Design design = designs.get(i);
            List<Finding> findings = new ArrayList<>(design.findings());
            try (Counter counter = Counter.of(design.name(), asked.thorough() && surroundings.errIsTerminal(), err)) {
                Options options = new Options(asked.thorough(), Options.DEFAULT.tolerance(), counter);
                List<Finding> known = asked.thorough() ? null : onOutlines.get(design.assembly());
                findings.addAll(
                        known == null ? Judge.judge(design.assembly(), options).findings() : known);
            }
            for (Clearance clearance : clearances) {
                if (clearance.second() == i) {
                    findings.add(clearance.finding(Options.DEFAULT.tolerance().length()));
                }
            }
            if (!prepared.isEmpty()) {
                findings.addAll(prepared.get(i).findings());
            }
            all.add(new Judged(design, findings));
        }
        return all;
    }
}
