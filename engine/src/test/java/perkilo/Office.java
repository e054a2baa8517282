package perkilo;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** LibreOffice, started with a profile of its own in a folder of the test. */
public final class Office {

    private static final String TYPE = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<!DOCTYPE %s PUBLIC"
            + " \"-//OpenOffice.org//DTD OfficeDocument 1.0//EN\" \"%s.dtd\">\n";
    private static final String LIBRARY_SPACE = " xmlns:library=\"http://openoffice.org/2000/library\"";

    private final Path folder;

    /**
     * Ready to start.
     *
     * @param folder for the profile and the log
     */
    public Office(Path folder) {
        this.folder = folder;
    }

    /**
     * Opens files and saves them, all in one process.
     *
     * @param kind such as {@code xlsx}
     * @param out a folder, which is created
     * @return the saved files, in the same order
     */
    public List<Path> convert(String kind, Path out, List<Path> files) throws IOException, InterruptedException {
        Files.createDirectories(out);
        List<String> arguments = new ArrayList<>(List.of("--convert-to", kind, "--outdir", out.toString()));
        files.forEach(file -> arguments.add(file.toString()));
        start(arguments);
        String ending = kind.contains(":") ? kind.substring(0, kind.indexOf(':')) : kind;
        List<Path> saved = new ArrayList<>();
        for (Path file : files) {
            String name = String.valueOf(file.getFileName());
            saved.add(out.resolve(name.substring(0, name.lastIndexOf('.')) + "." + ending));
        }
        assertThat(saved).allMatch(Files::exists, log());
        return saved;
    }

    /** Opens a workbook and saves it under the same name in a folder. */
    public Path convert(Path file, Path out) throws IOException, InterruptedException {
        return convert("xlsx:Calc MS Excel 2007 XML", out, List.of(file)).get(0);
    }

    /**
     * Runs the sub {@code Run} of a module in Basic.
     *
     * @param module its text
     * @param arguments what the sub is given; none may hold a quotation mark
     */
    public void run(String module, Path... arguments) throws IOException, InterruptedException {
        Path basic = profile().resolve("user/basic/Standard");
        if (!Files.exists(basic)) {
            start(List.of("--terminate_after_init")); // makes the profile, with an empty library
        }
        String escaped = module.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
        Files.writeString(
                basic.resolve("Typed.xba"),
                TYPE.formatted("script:module", "module")
                        + "<script:module xmlns:script=\"http://openoffice.org/2000/script\" script:name=\"Typed\""
                        + " script:language=\"StarBasic\">" + escaped + "</script:module>",
                UTF_8);
        String standard = "library:name=\"Standard\" library:readonly=\"false\" library:passwordprotected=\"false\"";
        for (String list : List.of("script", "dialog")) {
            Files.writeString(
                    basic.resolve(list + ".xlb"),
                    TYPE.formatted("library:library", "library") + "<library:library" + LIBRARY_SPACE + " " + standard
                            + ">" + (list.equals("script") ? "<library:element library:name=\"Typed\"/>" : "")
                            + "</library:library>",
                    UTF_8);
            Files.writeString(
                    basic.resolveSibling(list + ".xlc"),
                    TYPE.formatted("library:libraries", "libraries") + "<library:libraries" + LIBRARY_SPACE
                            + " xmlns:xlink=\"http://www.w3.org/1999/xlink\">"
                            + "<library:library library:name=\"Standard\" library:link=\"false\"/></library:libraries>",
                    UTF_8);
        }
        List<String> quoted = new ArrayList<>();
        for (Path argument : arguments) {
            quoted.add("\"" + argument + "\"");
        }
        start(List.of("macro:///Standard.Typed.Run(" + String.join(",", quoted) + ")"));
    }

    private Path profile() {
        return folder.resolve("profile");
    }

    private String log() throws IOException {
        return Files.readString(folder.resolve("office.log"), UTF_8);
    }

    private void start(List<String> arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                "soffice", "-env:UserInstallation=" + profile().toUri(), "--headless", "--norestore", "--nologo"));
        command.addAll(arguments);
        Process office = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("office.log").toFile())
                .start();
        assertThat(office.waitFor(10, TimeUnit.MINUTES)).isTrue();
        assertThat(office.exitValue()).as(log()).isZero();
    }
}
