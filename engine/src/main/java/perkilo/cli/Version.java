package perkilo.cli;

import picocli.CommandLine.IVersionProvider;

/** The version that the jar states. */
final class Version implements IVersionProvider {

    @Override
    public String[] getVersion() {
        String version = Version.class.getPackage().getImplementationVersion();
        return new String[] {"Perkilo " + (version == null ? "(not packaged)" : version)};
    }
}
