package perkilo.xlsx.write;

import java.io.BufferedOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import org.jspecify.annotations.Nullable;

/**
 * A file that is written beside its target and moved there when it is complete. Until then the old file is untouched,
 * and nothing is left behind if writing fails.
 */
final class StagedFile implements Closeable {

    /** Writes a file's content. */
    @FunctionalInterface
    interface Content {
        void writeTo(OutputStream out) throws IOException;
    }

    private static final int BUFFER = 1 << 16;

    private final Path target;
    private final Path draft;

    private StagedFile(Path target, Path draft) {
        this.target = target;
        this.draft = draft;
    }

    /**
     * Writes the content beside the target.
     *
     * @throws UnwritableFileException with the reason and what to do
     */
    static StagedFile write(Path target, Content content) throws IOException {
        Path place = Files.exists(target) ? target.toRealPath() : target.toAbsolutePath();
        FileFaults.refuse(target, place);
        DeadDrafts.delete(place);
        Path draft = DeadDrafts.next(place);
        StagedFile staged = new StagedFile(place, draft);
        try {
            staged.write(content);
            return staged;
        } catch (NoSuchFileException e) {
            throw staged.failed(UnwritableFileException.noFolder(target));
        } catch (IOException | UnsupportedOperationException e) {
            throw staged.failed(FileFaults.explained(target, e));
        }
    }

    private void write(Content content) throws IOException {
        try (FileChannel file = FileChannel.open(draft, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            OutputStream out = new BufferedOutputStream(Channels.newOutputStream(file), BUFFER);
            content.writeTo(out);
            out.flush();
            file.force(true);
        }
    }

    private IOException failed(IOException why) {
        try {
            close();
        } catch (IOException e) {
            why.addSuppressed(e);
        }
        return why;
    }

    /** The complete file, beside its place. */
    Path draft() {
        return draft;
    }

    /** Moves the complete file to its place. */
    void moveToItsPlace() throws IOException {
        try {
            keepPermissions();
            move();
        } catch (IOException e) {
            throw failed(FileFaults.explained(target, e));
        }
    }

    private void keepPermissions() throws IOException {
        @Nullable PosixFileAttributeView ofDraft = Files.getFileAttributeView(draft, PosixFileAttributeView.class);
        if (ofDraft != null && Files.exists(target)) {
            ofDraft.setPermissions(Files.getPosixFilePermissions(target));
        }
    }

    private void move() throws IOException {
        try {
            Files.move(draft, target, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(draft, target, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    /** Deletes the draft if it was not moved. */
    @Override
    public void close() throws IOException {
        Files.deleteIfExists(draft);
    }
}
