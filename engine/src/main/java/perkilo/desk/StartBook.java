package perkilo.desk;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Starts a workbook from a template. */
public final class StartBook {

    /**
     * Writes a new workbook.
     *
     * @param target the file; one that is there already is left as it is
     * @return the file
     * @throws IOException if it cannot be written
     */
    public Path start(Template template, Path target) throws IOException {
        try (InputStream from = template.open()) {
            Files.copy(from, target);
            return target;
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
