package perkilo.cli;

import java.util.List;
import java.util.Locale;

/** A picture of how times grow, both axes logarithmic, so that what is linear rises as steeply as the dashed line. */
final class GrowthChart {

    /** A time in seconds by a count. */
    record Point(int count, double seconds) {}

    /** How a time grows with one thing. */
    record Line(String name, List<Point> points) {}

    private static final int WIDTH = 860;
    private static final int HEIGHT = 460;
    private static final int LEFT = 70;
    private static final int TOP = 30;
    private static final int PLOT_WIDTH = 430;
    private static final int PLOT_HEIGHT = 370;

    /** Powers of ten at the axes' ends. */
    private static final int FIRST_COUNT = 0;

    private static final int LAST_COUNT = 5;
    private static final int FIRST_SECONDS = -3;
    private static final int LAST_SECONDS = 2;

    /** Okabe and Ito, Color Universal Design (2008). */
    private static final String[] COLORS = {"#0072B2", "#E69F00", "#009E73", "#CC79A7"};

    private final StringBuilder svg = new StringBuilder();

    private GrowthChart() {}

    static String svg(List<Line> lines) {
        return new GrowthChart().drawn(lines);
    }

    private String drawn(List<Line> lines) {
        add(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" font-family=\"sans-serif\" font-size=\"12\">"
                        + "<rect width=\"100%%\" height=\"100%%\" fill=\"white\"/>",
                WIDTH, HEIGHT);
        axes();
        segment(x(1), y(0.002), x(1e4), y(20), "#888888", "stroke-dasharray=\"4 4\"");
        for (int i = 0; i < lines.size(); i++) {
            line(lines.get(i), COLORS[i % COLORS.length], TOP + 24 + 40 * i);
        }
        add(
                "<text x=\"%d\" y=\"%d\" fill=\"#666\">dashed: twice as much takes twice as long</text>",
                LEFT + PLOT_WIDTH + 20, TOP + 24 + 40 * lines.size());
        return add("</svg>").svg.toString();
    }

    private void axes() {
        for (int power = FIRST_COUNT; power <= LAST_COUNT; power++) {
            double x = x(Math.pow(10, power));
            segment(x, TOP, x, TOP + PLOT_HEIGHT, "#DDDDDD", "");
            add(
                    "<text x=\"%.1f\" y=\"%d\" text-anchor=\"middle\">%,d</text>",
                    x, TOP + PLOT_HEIGHT + 18, Math.round(Math.pow(10, power)));
        }
        for (int power = FIRST_SECONDS; power <= LAST_SECONDS; power++) {
            double y = y(Math.pow(10, power));
            segment(LEFT, y, LEFT + PLOT_WIDTH, y, "#DDDDDD", "");
            add(
                    "<text x=\"%d\" y=\"%.1f\" text-anchor=\"end\">%s s</text>",
                    LEFT - 6, y + 4, power < 0 ? "0." + "0".repeat(-power - 1) + "1" : "1" + "0".repeat(power));
        }
        add("<text x=\"%d\" y=\"%d\" text-anchor=\"middle\">how many</text>", LEFT + PLOT_WIDTH / 2, HEIGHT - 12);
    }

    private void line(Line line, String color, int labelAt) {
        add("<polyline fill=\"none\" stroke=\"%s\" stroke-width=\"2\" points=\"", color);
        line.points().forEach(point -> add("%.1f,%.1f ", x(point.count()), y(point.seconds())));
        add("\"/>");
        line.points()
                .forEach(point -> add(
                        "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"4\" fill=\"%s\"/>",
                        x(point.count()), y(point.seconds()), color));
        segment(LEFT + PLOT_WIDTH + 20, labelAt - 4, LEFT + PLOT_WIDTH + 40, labelAt - 4, color, "stroke-width=\"2\"");
        add("<text x=\"%d\" y=\"%d\">%s</text>", LEFT + PLOT_WIDTH + 46, labelAt, line.name());
    }

    private void segment(double x1, double y1, double x2, double y2, String color, String more) {
        add("<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" stroke=\"%s\" %s/>", x1, y1, x2, y2, color, more);
    }

    private GrowthChart add(String format, Object... values) {
        svg.append(String.format(Locale.ROOT, format, values));
        return this;
    }

    private static double x(double count) {
        return LEFT + PLOT_WIDTH * (Math.log10(count) - FIRST_COUNT) / (LAST_COUNT - FIRST_COUNT);
    }

    private static double y(double seconds) {
        return TOP + PLOT_HEIGHT * (LAST_SECONDS - Math.log10(seconds)) / (LAST_SECONDS - FIRST_SECONDS);
    }
}
