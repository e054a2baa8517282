package perkilo.swaps.blend;
import org.junit.jupiter.api.Test;
import perkilo.swaps.lp.OjalgoSolver;
final class FindCaseTest {
    @Test void find() {
        for (Kind kind : new Kind[]{Kind.THICKENERS, Kind.OILS, Kind.SURFACTANTS}) { int found=0;
            for (int n = 0; n < 400 && found<4; n++) for (int k : new int[]{0,3}) try {
                BlendCase blend = BlendCase.of(kind, n); double now = new BlendModel(blend).costNow();
                if (Math.abs(blend.solved(new OjalgoSolver(), k).cost()-now) < 1e-5*now) { System.out.println("CASE "+kind+" "+n+" "+k); found++; }
            } catch (RuntimeException e) { }
        }
    }
}
