package perkilo.xlsx.splice;

import java.io.IOException;
import java.io.OutputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Unpacks and repacks the parts it copies, with the JDK alone: the quickest way for few and short parts. */
final class RepackedOutput implements PackageOutput {

    private final ZippedParts source;
    private final ZipOutputStream out;

    /**
     * An output of some parts.
     *
     * @param source where copied parts come from
     */
    RepackedOutput(ZippedParts source, OutputStream out) {
        this.source = source;
        this.out = new ZipOutputStream(out);
    }

    @Override
    public void copy(ZipEntry part) throws IOException {
        ZipEntry copy = new ZipEntry(part);
        if (copy.getMethod() == ZipEntry.DEFLATED) {
            copy.setCompressedSize(-1); // another program may have packed it smaller
        }
        put(copy, source.unpacked(part));
    }

    @Override
    public void write(String name, byte[] content) throws IOException {
        ZipEntry part = new ZipEntry(name);
        part.setTimeLocal(ANY_TIME);
        put(part, content);
    }

    private void put(ZipEntry part, byte[] content) throws IOException {
        out.putNextEntry(part);
        out.write(content);
        out.closeEntry();
    }

    @Override
    public void close() throws IOException {
        out.finish();
    }
}
