package perkilo.cli;

import picocli.CommandLine.IVersionProvider;

/** The version that the jar states. */
final class Version implements IVersionProvider {

    @Override
    public String[] getVersion() {
        return new String[] {"Perkilo " + words()};
    }

    /** The number of the version. */
    static String words() {
        String version = Version.class.getPackage().getImplementationVersion();
        return version == null ? "(not packaged)" : version;
    }
}
