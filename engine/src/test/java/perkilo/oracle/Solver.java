package perkilo.oracle;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A general solver of mixed-integer programs, run as a command on one thread. */
public enum Solver {
    /** COIN-OR's branch and cut. */
    CBC {
        @Override
        List<String> command(Path model, Path solution, int seconds) {
            return List.of(
                    "cbc",
                    model.toString(),
                    "-sec",
                    "" + seconds,
                    "-ratio",
                    "0",
                    "-allow",
                    "0.004",
                    "-solve",
                    "-solu",
                    solution.toString());
        }

        @Override
        boolean isOptimal(String log, String solution) {
            return solution.startsWith("Optimal");
        }

        @Override
        Map<String, Double> values(String solution) {
            return values(solution, Pattern.compile("(?m)^[* ]*\\d+\\s+(\\w+)\\s+(\\S+)\\s+\\S+\\s*$"));
        }
    },

    /** The GNU linear programming kit. */
    GLPSOL {
        @Override
        List<String> command(Path model, Path solution, int seconds) {
            return List.of("glpsol", "--lp", model.toString(), "--tmlim", "" + seconds, "-o", solution.toString());
        }

        @Override
        boolean isOptimal(String log, String solution) {
            return Pattern.compile("(?m)^Status: +(INTEGER )?OPTIMAL$")
                    .matcher(solution)
                    .find();
        }

        @Override
        Map<String, Double> values(String solution) {
            String columns = solution.substring(solution.indexOf("Column name"));
            return values(columns, Pattern.compile("(?m)^\\s*\\d+\\s+(\\w+)\\s+(?:\\*|B|N[LUFS])?\\s+(\\S+)"));
        }
    };

    abstract List<String> command(Path model, Path solution, int seconds);

    abstract boolean isOptimal(String log, String solution);

    abstract Map<String, Double> values(String solution);

    static Map<String, Double> values(String text, Pattern line) {
        Map<String, Double> values = new HashMap<>();
        Matcher matcher = line.matcher(text);
        while (matcher.find()) {
            values.put(matcher.group(1), Double.valueOf(matcher.group(2)));
        }
        return values;
    }

    /**
     * What a solver said.
     *
     * @param optimal whether it says that nothing is better
     * @param values of the variables; those left out are zero; empty where it found none
     * @param seconds it took
     */
    public record Answer(boolean optimal, Map<String, Double> values, double seconds) {}

    /** Solves a program. */
    public Answer solve(String model, int seconds) {
        try {
            Path folder = Files.createTempDirectory("model");
            try {
                return solve(model, seconds, folder);
            } finally {
                for (String name : List.of("model.lp", "solution.txt", "log.txt")) {
                    Files.deleteIfExists(folder.resolve(name));
                }
                Files.delete(folder);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Answer solve(String model, int seconds, Path folder) throws IOException {
        Path lp = folder.resolve("model.lp");
        Path solution = folder.resolve("solution.txt");
        Path log = folder.resolve("log.txt");
        Files.writeString(lp, model, StandardCharsets.US_ASCII);
        long start = System.nanoTime();
        Process process = new ProcessBuilder(command(lp, solution, seconds))
                .redirectErrorStream(true)
                .redirectOutput(log.toFile())
                .start();
        try {
            process.waitFor();
        } catch (InterruptedException e) {
            process.destroyForcibly();
            throw new IllegalStateException("interrupted", e);
        }
        double took = (System.nanoTime() - start) / 1e9;
        String said = Files.readString(log);
        if (!Files.exists(solution)) {
            throw new IllegalStateException(this + " wrote no solution: " + said);
        }
        String text = Files.readString(solution);
        return new Answer(isOptimal(said, text), values(text), took);
    }
}
