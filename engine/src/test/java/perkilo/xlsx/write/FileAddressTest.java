package perkilo.xlsx.write;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Addresses of files as links write them: relative to the workbook, percent-encoded (RFC 3986). */
final class FileAddressTest {

    @ParameterizedTest(name = "{0} from {1}")
    @CsvSource({
        "brand/launch.xlsx, brand/summary.xlsx, launch.xlsx",
        "brand/Hand balm.xlsx, brand/summary.xlsx, Hand%20balm.xlsx",
        "brand/Öl & more #2.xlsx, brand/summary.xlsx, %C3%96l%20&%20more%20%232.xlsx",
        "brand/launch.xlsx, results/summary.xlsx, ../brand/launch.xlsx",
        "brand/sub/launch.xlsx, brand/summary.xlsx, sub/launch.xlsx",
        "launch.xlsx, summary.xlsx, launch.xlsx",
        "brand/a:b.xlsx, brand/summary.xlsx, ./a:b.xlsx"
    })
    void the_address_is_relative_to_the_workbook(Path file, Path workbook, String address) {
        assertThat(FileAddress.of(file, workbook)).isEqualTo(address);
    }
}
