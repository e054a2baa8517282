package perkilo.swaps;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import perkilo.model.Book;
import perkilo.model.Formula;
import perkilo.model.Material;
import perkilo.names.Names;
import perkilo.swaps.closeness.Closeness;
import perkilo.swaps.facts.Functions;
import perkilo.swaps.gate.Gates;
import perkilo.swaps.gate.Verdict;
import perkilo.swaps.label.LabelChange;
import perkilo.swaps.money.LinePrices;
import perkilo.swaps.money.RunChange;
import perkilo.swaps.money.RunsOfFormula;
import perkilo.swaps.role.Role;
import perkilo.swaps.role.Roles;
import perkilo.swaps.trial.Dosing;
import perkilo.swaps.trial.Portion;
import perkilo.swaps.trial.Recipe;
import perkilo.swaps.trial.Trial;
import perkilo.swaps.trial.TrialWords;

/** The search that tries every material in every line: first the cheap gates, then the purchase plans. */
final class LineSearch {

    private final SwapOptions options;
    private final Book book;
    private final List<Material> available;

    LineSearch(Book book, LinePrices prices, SwapOptions options) {
        this.book = book;
        this.options = options;
        this.available = book.materials().values().stream()
                .filter(material -> !material.isWater() && prices.isAvailable(material))
                .toList();
    }

    /**
     * What was found.
     *
     * @param swaps by rank
     * @param rejected by formula and line
     * @param missing facts without which materials cannot be ranked
     * @param kept lines that are not compared
     */
    record Result(List<Swap> swaps, List<Rejected> rejected, List<MissingFact> missing, List<KeptLine> kept) {

        /** Whether no line has any candidate. */
        boolean isOfNothing() {
            return swaps.isEmpty() && rejected.isEmpty() && missing.isEmpty();
        }
    }

    /** A swap or a rejected material; one of the two is null. */
    private record Answer(@Nullable Swap swap, @Nullable Rejected rejected) {}

    /** A material in a line whose role it can play. */
    private record Task(RunsOfFormula runs, Trial trial, List<Verdict> verdicts, Closeness closeness) {

        /** The reasons of all gates that are shut; empty if all are open. */
        String shut() {
            return verdicts.stream()
                    .filter(verdict -> !verdict.ok())
                    .map(Verdict::withName)
                    .collect(Collectors.joining(" "));
        }
    }

    Result find(Map<String, RunsOfFormula> runs) {
        LineTriage triage = new LineTriage(options.actives());
        List<Task> tasks = new ArrayList<>();
        runs.forEach((name, ofFormula) -> tasks.addAll(tasks(name, ofFormula, triage)));
        AtomicInteger done = new AtomicInteger();
        List<Answer> answers = tasks.parallelStream()
                .map(task -> {
                    Answer answer = answer(task);
                    options.progress().accept(done.incrementAndGet(), tasks.size());
                    return answer;
                })
                .toList();
        List<Swap> swaps = new ArrayList<>();
        List<Rejected> rejected = new ArrayList<>();
        for (Answer answer : answers) {
            if (answer.swap() != null) {
                swaps.add(answer.swap());
            }
            if (answer.rejected() != null) {
                rejected.add(answer.rejected());
            }
        }
        return new Result(ranked(swaps), rejected, triage.missing(), triage.kept());
    }

    /** By rank. The rank of each swap is computed once, because it takes many sums. */
    private static List<Swap> ranked(List<Swap> swaps) {
        IdentityHashMap<Swap, BigDecimal> ranks = new IdentityHashMap<>();
        swaps.forEach(swap -> ranks.put(swap, swap.rank()));
        return swaps.stream()
                .sorted(Comparator.comparing((Swap swap) -> ranks.get(swap))
                        .thenComparing(swap -> swap.closeness().score().negate())
                        .thenComparing(swap -> swap.formula().name())
                        .thenComparing(swap -> swap.trial().line())
                        .thenComparing(swap -> swap.trial().to().name()))
                .toList();
    }

    private List<Task> tasks(String name, RunsOfFormula runs, LineTriage triage) {
        Formula formula = book.formula(name).orElseThrow();
        Recipe recipe = Recipe.of(book, formula);
        Dosing dosing = new Dosing(recipe);
        List<Task> tasks = new ArrayList<>();
        for (int line = 0; line < recipe.portions().size(); line++) {
            LineTriage.Open open = isWanted(recipe, line) ? triage.open(recipe, line) : null;
            if (open != null) {
                tasks.addAll(tasks(runs, recipe, line, open, dosing, triage));
            }
        }
        return tasks;
    }

    private List<Task> tasks(
            RunsOfFormula runs, Recipe recipe, int line, LineTriage.Open open, Dosing dosing, LineTriage triage) {
        Material from = recipe.portions().get(line).material();
        List<Task> tasks = new ArrayList<>();
        for (Material candidate : available) {
            boolean other = !Names.key(candidate.name()).equals(Names.key(from.name()));
            if (other && open.admits(from, candidate)) {
                Trial trial = dosing.of(line, candidate);
                Task task = new Task(
                        runs,
                        trial,
                        Gates.judge(trial, options.anyHlb()),
                        Closeness.of(open.role(), trial.from(), trial.to()));
                // a fact is only asked for where everything else is open
                if (!task.shut().isEmpty() || triage.isDecided(trial)) {
                    tasks.add(task);
                }
            }
        }
        return tasks;
    }

    private boolean isWanted(Recipe recipe, int line) {
        Portion portion = recipe.portions().get(line);
        Material material = portion.material();
        String asked = options.function();
        return portion.level().signum() > 0
                && !material.isWater()
                && SwapFinder.matches(options.material(), material.name())
                && (asked == null || Functions.does(material, asked) || isRole(recipe, line, asked));
    }

    private static boolean isRole(Recipe recipe, int line, String asked) {
        Role role = recipe.roleOf(line).role();
        return role != null && Roles.named(asked).filter(role::equals).isPresent();
    }

    private Answer answer(Task task) {
        Trial trial = task.trial();
        Closeness closeness = task.closeness();
        if (!task.shut().isEmpty()) {
            return rejected(trial, closeness, task.verdicts(), task.shut());
        }
        if (closeness.worst().compareTo(options.leastCloseness()) < 0) {
            return rejected(
                    trial,
                    closeness,
                    task.verdicts(),
                    SwapMessages.notClose(
                            closeness.range(), options.leastCloseness().toPlainString()));
        }
        return costed(task, closeness, task.verdicts());
    }

    private Answer costed(Task task, Closeness closeness, List<Verdict> verdicts) {
        Trial trial = task.trial();
        Optional<List<RunChange>> runs = task.runs().changes(trial.after().formula());
        if (runs.isEmpty()) {
            return rejected(trial, closeness, verdicts, SwapMessages.cannotBeBought());
        }
        Swap swap = new Swap(
                trial,
                closeness,
                verdicts,
                runs.get(),
                LabelChange.of(trial.before(), trial.after()),
                cautions(trial, verdicts));
        BigDecimal least = book.settings().leastSaving().value();
        if (swap.saves(least)) {
            return new Answer(swap, null);
        }
        String reason =
                swap.saves() ? SwapMessages.savesTooLittle(TrialWords.percent(least)) : SwapMessages.savesNothing();
        return new Answer(null, new Rejected(trial, closeness, verdicts, reason, true));
    }

    private static Answer rejected(Trial trial, Closeness closeness, List<Verdict> verdicts, String reason) {
        return new Answer(null, new Rejected(trial, closeness, verdicts, reason, false));
    }

    private List<String> cautions(Trial trial, List<Verdict> verdicts) {
        Set<String> cautions = new LinkedHashSet<>();
        verdicts.forEach(verdict -> cautions.addAll(verdict.cautions()));
        Cautions.boughtAlready(book, trial.before().formula(), trial.to()).ifPresent(cautions::add);
        Cautions.givesItsName(book, trial.before().formula(), trial.from(), trial.to())
                .ifPresent(cautions::add);
        return List.copyOf(cautions);
    }
}
