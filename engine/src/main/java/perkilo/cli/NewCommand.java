package perkilo.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Starts a workbook from a template. */
@Command(
        name = "new",
        mixinStandardHelpOptions = true,
        description = "Start a workbook from a template; new --list shows the templates.")
final class NewCommand implements Callable<Integer> {

    @Parameters(index = "0", arity = "0..1", paramLabel = "NAME", description = "The template's name.")
    private @Nullable String name;

    @Parameters(index = "1", arity = "0..1", paramLabel = "BOOK", description = "The workbook to write.")
    private @Nullable Path book;

    @Option(names = "--list", description = "Show the templates.")
    private boolean list;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() throws IOException {
        if (list) {
            for (Template template : Template.values()) {
                spec.commandLine().getOut().printf("%-10s  %s%n", template.word(), template.purpose());
            }
            spec.commandLine().getOut().flush();
            return Exit.DONE;
        }
        if (name == null || book == null) {
            throw new ParameterException(
                    spec.commandLine(), "name a template and the workbook to write; --list shows the templates");
        }
        Template template = Template.find(name)
                .orElseThrow(() -> new ParameterException(
                        spec.commandLine(), "there is no template \"%s\"; --list shows them".formatted(name)));
        write(template, book);
        spec.commandLine().getOut().println("Written to " + book);
        spec.commandLine().getOut().flush();
        return Exit.DONE;
    }

    private static void write(Template template, Path target) throws IOException {
        try (InputStream from = template.open()) {
            Files.copy(from, target);
        } catch (FileAlreadyExistsException there) {
            throw new IOException(
                    "%s is there already and is left as it is. Choose another name.".formatted(target), there);
        } catch (NoSuchFileException missing) {
            throw new IOException("the folder of %s does not exist. Create it first.".formatted(target), missing);
        } catch (AccessDeniedException denied) {
            throw new IOException("%s cannot be written: the folder is read-only.".formatted(target), denied);
        }
    }
}
