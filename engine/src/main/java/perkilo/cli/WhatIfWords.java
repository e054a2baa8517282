package perkilo.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import perkilo.model.ScenarioLine;
import perkilo.origin.Origin;

/** Scenarios that are typed on the command line: {@code USD +10 %; Run size 2000}. */
final class WhatIfWords {

    /**
     * A thing and what becomes of it; the last number belongs to the change, with its sign before and its unit behind.
     */
    private static final Pattern CHANGE = Pattern.compile("(.*\\S)\\s*?(\\s[+\\-\u2212]?\\s*\\d[\\d.,]*\\s*%?)");

    private WhatIfWords() {}

    /** The lines of all scenarios; each is called by what was typed. */
    static List<ScenarioLine> lines(List<String> typed) {
        List<ScenarioLine> lines = new ArrayList<>();
        for (String scenario : typed) {
            for (String one : scenario.split(";", -1)) {
                String change = one.strip();
                if (!change.isEmpty()) {
                    Matcher parts = CHANGE.matcher(change);
                    boolean fits = parts.matches();
                    lines.add(new ScenarioLine(
                            scenario.strip(),
                            fits ? parts.group(1).strip() : change,
                            fits ? parts.group(2).strip() : "",
                            Origin.NONE,
                            Origin.NONE));
                }
            }
        }
        return lines;
    }
}
