package perkilo.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import perkilo.json.ListsJson;
import perkilo.origin.Finding;
import perkilo.pricelists.ListFolder;
import perkilo.pricelists.Question;
import perkilo.pricelists.TakeIn;
import perkilo.pricelists.TakenIn;
import perkilo.reading.KnownSheets;

/** Takes lists in one after the other, and says what became of each. */
final class TakeInLists {

    private final Console console;
    private final ListFolder folder;
    private final @Nullable Path book;

    TakeInLists(Console console, ListFolder folder, @Nullable Path book) {
        this.console = console;
        this.folder = folder;
        this.book = book;
    }

    int take(List<Path> files, TakeIn.Said said, boolean json) throws IOException {
        KnownSheets known =
                KnownSheets.read(book, Files.isDirectory(folder.path()) ? List.of(folder.path()) : List.of());
        Set<String> suppliers = new LinkedHashSet<>(known.suppliers());
        TakeIn takeIn = new TakeIn(folder, known.grids(), suppliers);
        List<TakenIn> lists = new ArrayList<>();
        for (Path file : files) {
            lists.add(takeIn.take(file, said));
        }
        if (json) {
            console.json(ListsJson.of(lists));
        }
        lists.forEach(this::say);
        return lists.stream().allMatch(TakenIn::isKept) ? Exit.DONE : Exit.BAD_INPUT;
    }

    private void say(TakenIn list) {
        List<Finding> findings = new ArrayList<>(list.findings());
        for (Question question : list.questions()) {
            findings.add(Finding.error(question.where(), question.sentence()));
        }
        console.findings(findings);
        ListFolder.Kept kept = list.kept();
        if (kept == null) {
            console.complain(list.source() + " is not taken in.");
            if (list.mapping() != null) {
                console.complain("Answer what is null in " + list.mapping() + " and run the command again.");
            } else if (!list.questions().isEmpty()) {
                console.complain(
                        "Name the supplier and run the command again: the mapping to answer in is one of his.");
            }
            return;
        }
        console.say("%s of %s: %s of %s, %s in %s"
                .formatted(
                        list.supplier(),
                        list.quotedOn(),
                        Console.counted(list.prices(), "price"),
                        Console.counted(list.items(), "item"),
                        switch (kept.how()) {
                            case NEW -> "kept";
                            case REPLACED -> "replaced (the one before is beside it as .bak)";
                            case THERE_ALREADY -> "there already";
                        },
                        kept.file()));
    }
}
