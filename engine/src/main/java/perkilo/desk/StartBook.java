package perkilo.desk;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Service that starts a workbook from a template. */
public final class StartBook {

    /**
     * Writes a new workbook.
     *
     * @param target the file; an existing one is not changed
     * @return the file
     * @throws IOException if it cannot be written
     */
    public Path start(Template template, Path target) throws IOException {
        try (InputStream from = template.open()) {
            Files.copy(from, target);
            return target;
        } catch (FileAlreadyExistsException there) {
            throw new IOException(DeskMessages.alreadyThere(target), there);
        } catch (NoSuchFileException missing) {
            throw new IOException(DeskMessages.noFolder(target), missing);
        } catch (AccessDeniedException denied) {
            throw new IOException(DeskMessages.writeProtected(target), denied);
        }
    }
}
